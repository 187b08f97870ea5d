import type { Plan } from '../../core/plan-shape.ts';
import { type HeldUp, heldUp } from '../../core/shopping/held-up.ts';
import { type OrderNames, someWords, whatFor } from './order-words.ts';
import { printCount } from './print-figure.ts';

/** How many of the things that wait are named. */
const named = 3;

/** One item that the work waits for, in words. */
export interface HeldUpRow {
  readonly id: string;
  readonly what: string;
  readonly fact: string;
  readonly lights: readonly string[];
}

/** What the work waits for, in words: a sentence, and the items, longest to come first. */
export interface HeldUpRows {
  readonly says: string;
  readonly rows: readonly HeldUpRow[];
}

const sentence = ({ awaited, unknown, lastDay }: HeldUp): string => {
  const [longest] = awaited;
  const open = unknown === 0 ? '' : ` ${printCount(unknown, 'item')} still to come without days said.`;
  if (longest === undefined) return unknown === 0 ? 'Nothing is still to come.' : open.trim();
  const days = printCount(longest.leadDays, 'day');
  const last = lastDay === undefined ? '' : ` The last of it comes on ${lastDay}.`;
  return `The work waits longest for ${longest.item}: ${days}.${last}${open}`;
};

/** Tells what holds up the work on a day. */
export const heldUpRows = (names: OrderNames, plan: Pick<Plan, 'shopping' | 'lines'>, today: string): HeldUpRows => {
  const held = heldUp(plan.shopping, today);
  const nameOf = whatFor(names, plan);
  return {
    says: sentence(held),
    rows: held.awaited.map(({ id, item, leadDays, comes, isLate, for: whom }) => ({
      id,
      what: `${item}: ${printCount(leadDays, 'day')} to come`,
      fact: [
        ...(isLate ? ['late: its last day to order is past'] : []),
        ...(comes === undefined ? [] : [isLate ? `ordered today it comes on ${comes}` : `comes by ${comes}`]),
        `holds up ${someWords(whom.map(nameOf), named)}`,
      ].join(', '),
      lights: whom,
    })),
  };
};
