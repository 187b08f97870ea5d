import { metNeeds } from '../../readings/met-needs.ts';
import type { WayIn } from '../../readings/ways-in.ts';
import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

/** Sentences in which the offset is in the depth already, and messages that have a field for one beside the depth. */
const within: ReadonlySet<unknown> = new Set(['DBK', 'DBS']);
const beside: ReadonlySet<unknown> = new Set(['DPT', 128_267]);

/** Where a depth that holds its offset goes on in a message that has room for another: who sends it so, and who turns it. */
interface Turned {
  readonly source: string;
  readonly sentence: string;
  readonly kit: string;
}

const turnedAt = ({ signals, kit, ports }: WayIn): Turned | undefined => {
  const first = signals.findIndex(({ message }) => within.has(message));
  const next = signals.findIndex(({ message }, at) => at > first && beside.has(message));
  const [source, unit] = [ports[first], kit[next]];
  if (source === undefined || unit === undefined) return undefined;
  return { source, sentence: String(signals[first]?.message), kit: unit };
};

/** Depth below keel or surface goes on as depth below the transducer with an offset of its own: a second one is added. */
export const offsetTwice: Rule = {
  id: 'readings/offset-twice',
  level: 'doubt',
  title: 'The offset of a depth may be added twice.',
  sources: ['message-fields', 'practice-converter'],
  looksAt: 'whole-plan',
  check: ({ index, reaches }) =>
    metNeeds(reaches, ({ reading }) => reading === 'depth').flatMap(({ need, ways }) => {
      const [turned] = ways.flatMap((way) => turnedAt(way) ?? []);
      if (turned === undefined) return [];
      const { source, sentence, kit } = turned;
      const from = sentence === 'DBK' ? 'keel' : 'surface';
      return [
        {
          about: [need.at, source, kit],
          says: `${unitName(index, source)} sends ${sentence}, depth from the ${from} with the offset in it. ${unitName(index, kit)} passes it on in a message with an offset of its own: set there, or on ${unitName(index, need.at)}, it is added again, and the depth is wrong by it.`,
          cure: `Let ${unitName(index, source)} send DPT, or leave the offset at nothing in every unit behind it and prove it with a lead line.`,
        },
      ];
    }),
};
