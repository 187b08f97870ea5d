import type { BoatIndex } from '../boat/boat-index.ts';
import type { Join } from '../boat/boat-schema.ts';
import { splitDotted } from '../boat/ids.ts';
import { shortName } from '../boat/short-name.ts';
import { readingName } from '../facts/reading-words.ts';
import type { ClashingNeeds, ProposalEntry } from '../proposal-shape.ts';
import type { NeedsThatClash } from './proposing/needs-that-clash.ts';
import type { Proposal } from './proposing/propose-joins.ts';

type Edits = ProposalEntry['joins'][number]['edits'];

/** The edits that take a proposed join into the file. */
const editsOf = ({ kind, bus, members }: Join): Edits => {
  if (bus !== undefined)
    return members.map(({ kit, port }) => ({ edit: 'join-bus', params: { port: `${kit}.${port}`, bus } }));
  const [first, ...others] =
    kind === 'wifi' || members.every(({ as }) => as === 'both')
      ? members
      : [...members].sort((a, b) => Number(b.as === 'talk') - Number(a.as === 'talk'));
  return first === undefined
    ? []
    : others.map(({ kit, port }) => ({
        edit: 'join-ports',
        params: { from: `${first.kit}.${first.port}`, to: `${kit}.${port}` },
      }));
};

const forbidsOf = ({ kind, bus, members }: Join): Edits => [
  { edit: 'forbid-join', params: { kind, ...(bus === undefined ? {} : { bus }), members } },
];

const unitName = (index: BoatIndex, kit: string): string => shortName(index.kit.get(kit)?.name ?? kit);

/** What there is too little of, in words: `at kit.port`, `from kit.port`, `bus id`. */
const overWords = (index: BoatIndex, key: string): string => {
  const [what, id = ''] = key.split(' ');
  if (what === 'bus') return `one device more on ${index.buses.get(id)?.name ?? id}`;
  const { kit, part } = splitDotted(id);
  return what === 'from'
    ? `one listener more on output ${part} of ${unitName(index, kit)}`
    : `one more port like ${part} of ${unitName(index, kit)}`;
};

const listed = (words: readonly string[], last: string): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)}`;

const clashEntry = (index: BoatIndex, { needs, over }: NeedsThatClash): ClashingNeeds => {
  const wanted = needs.map((need) => `${readingName(need)} at ${unitName(index, need.at)}`);
  const helps =
    over.length === 0
      ? 'No port more would help: the joins would go round in a loop, or a line would be too full.'
      : `It would take ${listed(
          over.map((key) => overWords(index, key)),
          'or',
        )}; a multiplexer or a buffer can stand in for it.`;
  return {
    needs: needs.map(({ reading, instance, at }) => ({
      reading,
      ...(instance === undefined ? {} : { instance }),
      at,
    })),
    over: over.map((key) => key.split(' ')[1] ?? key),
    says: `These cannot all arrive with the ports there are: ${listed(wanted, 'and')}. ${helps}`,
  };
};

/** The joins proposed for a boat as her plan tells them. */
export const proposalEntry = (index: BoatIndex, proposal: Proposal): ProposalEntry => ({
  joins: proposal.joins.map((join) => ({
    join: join.id,
    cost: proposal.chosen
      .filter(({ bus, members }) =>
        members.every(
          (one) =>
            bus === join.bus &&
            join.members.some((own) => own.kit === one.kit && (own.port === one.port || own.as === one.as)),
        ),
      )
      .reduce((sum, { cost }) => sum + cost, 0),
    edits: editsOf(join),
    forbids: forbidsOf(join),
  })),
  cost: proposal.cost,
  bound: proposal.bound,
  proven: proposal.proven,
  clashes: proposal.clashes.map((clash) => clashEntry(index, clash)),
});
