import type { Plan } from '../../core/plan-shape.ts';
import { cardBoat } from '../cards/card-boat.ts';
import { currencyOf } from '../lists/cure-words.ts';
import { printMoney, wayWords } from '../lists/order-words.ts';
import { printCount } from '../lists/print-figure.ts';
import { tapeRows } from '../lists/tape-rows.ts';
import type { Look, NextAsked } from './next-thing.ts';
import { openAt, stepOfMost } from './open-findings.ts';

// What makes a plan sure, and what is done by it.

/** What could still be ordered otherwise: neither at hand nor on its way. */
const toOrder = ({ boat, plan }: NextAsked) => {
  const stands = new Map((boat.orders ?? []).map(({ item, state }) => [item, state]));
  return plan.shopping.filter(({ id }) => (stands.get(id) ?? 'order') === 'order');
};

/** With the first job ticked the order is out and the doubts were lived with: what is done aboard leads from there. */
export const hasBegun = ({ done }: NextAsked): boolean => (done?.size ?? 0) > 0;

export const tape: Look = (asked) => {
  const { boat, plan } = asked;
  if (hasBegun(asked) || toOrder(asked).length === 0) return undefined;
  const names = cardBoat(boat);
  const [first] = tapeRows(names, plan, { currency: currencyOf(boat) });
  const [entry] = plan.tape;
  if (first === undefined || entry === undefined) return undefined;
  const what = names.ways.has(entry.about) ? wayWords(names, entry.about) : (names.kit.get(entry.about)?.name ?? '');
  return {
    id: 'tape',
    step: 'boat',
    does: `Go aboard and tape or prove ${printCount(plan.tape.length, 'thing')} before you order.`,
    why: `${printMoney(first.atStake)} ${currencyOf(boat)} of the order hang on the first: ${what}.`,
  };
};

export const doubts: Look = (asked) => {
  const open = hasBegun(asked) ? [] : openAt(asked.plan, 'doubt');
  return open.length === 0
    ? undefined
    : {
        id: 'doubts',
        step: stepOfMost(open.map(({ rule }) => rule)),
        does: `Clear up ${printCount(open.length, 'doubt')}: look aboard, mend it, or accept it with a reason.`,
        why: 'What is in doubt now costs a second trip later.',
      };
};

export const sheets: Look = (asked) => {
  const count = asked.plan.readings.filter(({ arrives, rests }) => arrives && rests === 'typical').length;
  if (count === 0 || hasBegun(asked) || toOrder(asked).length === 0) return undefined;
  return {
    id: 'sheets',
    step: 'kit',
    does: 'Read the makers’ own sheets, and enter what is otherwise than in the typical ones.',
    why: `${printCount(count, 'reading rests', 'readings rest')} on typical sheets, and what you buy may differ.`,
  };
};

export const order: Look = (asked) => {
  const open = toOrder(asked);
  return open.length === 0
    ? undefined
    : {
        id: 'order',
        step: 'buy',
        does: `Order ${printCount(open.length, 'thing')}, and tick what you have or have ordered.`,
        why: 'The work is laid by what is there, and by the day the rest is due.',
      };
};

const jobsOf = ({ work }: Plan) => (work?.phases ?? []).flatMap(({ jobs }) => jobs);

export const start: Look = (asked) =>
  hasBegun(asked) || jobsOf(asked.plan).length === 0 || (asked.boat.work?.starts ?? []).length > 0
    ? undefined
    : {
        id: 'start',
        step: 'work',
        does: 'Say on which day the work begins.',
        why: 'Then the jobs get dates, and every part a last day to order it.',
      };

export const jobs: Look = ({ plan, done }) => {
  const open = jobsOf(plan).filter(({ id, leftOut }) => leftOut === undefined && done?.has(id) !== true);
  return open.length === 0
    ? undefined
    : {
        id: 'jobs',
        step: 'work',
        does: `Do the work by the day sheets: ${printCount(open.length, 'job')} to do.`,
        why: 'In this order as little as may be is dark of what she must not be without.',
      };
};

export const tests: Look = ({ boat, plan, tested }) => {
  if (boat.kit.length === 0) return undefined;
  const { tried, wrong } = tested ?? { tried: 0, wrong: 0 };
  const left = plan.tests.length - tried;
  if (wrong === 0 && left <= 0) return undefined;
  return {
    id: 'tests',
    step: 'prove',
    does:
      wrong > 0
        ? `Find out why ${printCount(wrong, 'test')} came out wrong.`
        : `Test her at the dock: ${printCount(left, 'test')} to try.`,
    why: 'What was measured is worth more than what was planned.',
  };
};

export const papers: Look = ({ boat }) =>
  boat.kit.length === 0 || (boat.revisions ?? []).length > 0
    ? undefined
    : {
        id: 'papers',
        step: 'binder',
        does: 'Give the papers out as revision A.',
        why: 'Whoever opens a locker in ten years then knows which drawing is the boat.',
      };
