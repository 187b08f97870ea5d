import { indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { shortName } from '../../core/boat/short-name.ts';
import type { JoinEntry, Plan } from '../../core/plan-shape.ts';
import type { ProposalEntry } from '../../core/proposal-shape.ts';
import { currencyOf } from './cure-words.ts';
import { printMoney } from './order-words.ts';

/** A join that the plan proposes, in words, with what its cable costs. */
export interface ProposalRow {
  readonly join: string;
  readonly says: string;
  readonly cost: string;
  readonly edits: ProposalEntry['joins'][number]['edits'];
  readonly forbids: ProposalEntry['joins'][number]['forbids'];
}

const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;

const saysOf = (boat: Boat, { bus, members }: JoinEntry): string => {
  const index = indexBoat(boat);
  const unit = (kit: string): string => shortName(index.kit.get(kit)?.name ?? kit);
  if (bus !== undefined)
    return `Put on ${index.buses.get(bus)?.name ?? bus}: ${listed(members.map(({ kit }) => unit(kit)))}`;
  const talker = members.find(({ as }) => as === 'talk') ?? members[0];
  const others = members.filter((member) => member !== talker);
  if (talker === undefined) return '';
  const port = (member: JoinEntry['members'][number]): string => `${member.port} of ${unit(member.kit)}`;
  return `Wire ${port(talker)} to ${listed(others.map(port))}`;
};

/** Every join that the plan proposes, in its order. */
export const proposalRows = (boat: Boat, plan: Pick<Plan, 'joins' | 'proposal'>): ProposalRow[] => {
  const joins = new Map(plan.joins.map((join) => [join.id, join]));
  return (plan.proposal?.joins ?? []).flatMap(({ join, cost, edits, forbids }) => {
    const entry = joins.get(join);
    if (entry === undefined) return [];
    return [{ join, says: saysOf(boat, entry), cost: `${printMoney(cost)} ${currencyOf(boat)}`, edits, forbids }];
  });
};

/** What the proposal is, in one sentence: how many joins, what they cost, and whether anything cheaper would do. */
export const proposalSays = (boat: Boat, { joins, cost, bound, proven }: ProposalEntry): string => {
  const currency = currencyOf(boat);
  const count = joins.length === 1 ? 'One join is' : `${joins.length} joins are`;
  const surely = proven
    ? 'proved: nothing cheaper brings as much'
    : `not proved: nothing can cost less than ${printMoney(bound)} ${currency}`;
  return `${count} not in the file and planned as proposed, for ${printMoney(cost)} ${currency} of cable and tees, ${surely}.`;
};
