import { isOpen } from '../../core/accepted-findings.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { shortName } from '../../core/boat/short-name.ts';
import type { Level, Plan } from '../../core/plan-shape.ts';
import type { Tested } from '../../core/proof/dock/tested.ts';
import { cardBoat } from '../cards/card-boat.ts';
import { offeredWiring } from '../kit/offered-wiring.ts';
import { currencyOf } from '../lists/cure-words.ts';
import { printMoney } from '../lists/order-words.ts';
import { printCount } from '../lists/print-figure.ts';
import { tapeRows } from '../lists/tape-rows.ts';
import { unfedRows } from '../lists/unfed-rows.ts';
import { type JobStep, jobSteps } from './job-steps.ts';
import { stepsOfRule } from './steps-of-rule.ts';

/** One thing to do at a boat: where, what, and what it is good for. */
export interface NextThing {
  readonly id: string;
  readonly step: JobStep;
  readonly does: string;
  readonly why: string;
}

/** What is looked at: the boat, her plan, and how far her log says tests and jobs have come. */
export interface NextAsked {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly tested?: Tested | undefined;
  readonly done?: ReadonlyMap<string, unknown> | undefined;
}

type Look = (asked: NextAsked) => NextThing | undefined;

const places: Look = ({ boat }) =>
  boat.places.length > 0
    ? undefined
    : {
        id: 'places',
        step: 'boat',
        does: 'Add the places where things stand, or begin again from a hull pattern.',
        why: 'Every cable is laid from place to place.',
      };

const kit: Look = ({ boat }) =>
  boat.kit.length > 0
    ? undefined
    : {
        id: 'kit',
        step: 'kit',
        does: 'Put the first unit aboard: type what you call it, press it, press where it goes.',
        why: 'What she has, what goes and what comes is all that the rest is worked out from.',
      };

const needs: Look = ({ plan }) =>
  plan.readings.length > 0
    ? undefined
    : {
        id: 'needs',
        step: 'needs',
        does: 'Say what must be seen at which screen.',
        why: 'Only then can the plan tell what arrives there, and what does not and why.',
      };

const wiring: Look = ({ boat, plan }) => {
  const offered = offeredWiring(boat, plan);
  return offered === undefined
    ? undefined
    : {
        id: 'wiring',
        step: 'kit',
        does: `When all that comes is aboard, wire her so: ${offered.says}.`,
        why: 'The plan proposes it as the cheapest that brings what must be seen. One press, and undo takes it back.',
      };
};

const openAt = (plan: Plan, level: Level) =>
  plan.findings.filter((finding) => finding.level === level && isOpen(finding));

/** The step at which most of some findings are looked after. */
const stepOfMost = (rules: readonly string[]): JobStep => {
  const countAt = (step: JobStep): number => rules.filter((rule) => stepsOfRule(rule)[0] === step).length;
  return jobSteps.reduce((most, step) => (countAt(step) > countAt(most) ? step : most));
};

const mended = (level: 'danger' | 'fault', why: string): Look => {
  return ({ plan }) => {
    const open = openAt(plan, level);
    return open.length === 0
      ? undefined
      : {
          id: level,
          step: stepOfMost(open.map(({ rule }) => rule)),
          does: `Mend ${printCount(open.length, level)} in the notes; each says how.`,
          why,
        };
  };
};

const missing: Look = ({ plan }) => {
  const count = plan.readings.filter(({ must, arrives }) => must && !arrives).length;
  return count === 0
    ? undefined
    : {
        id: 'missing',
        step: 'needs',
        does: `Bring ${printCount(count, 'reading')} to where it must be seen.`,
        why: 'Each says at which link it breaks, and the cheapest cure stands first.',
      };
};

const unfed: Look = ({ boat, plan }) => {
  const count = unfedRows(cardBoat(boat), plan).length;
  return count === 0
    ? undefined
    : {
        id: 'unfed',
        step: 'power',
        does: `Give a feed to ${printCount(count, 'thing')} that none leads to.`,
        why: 'Wire and fuse can be sized only for what hangs on a circuit.',
      };
};

const tape: Look = ({ boat, plan }) => {
  const index = cardBoat(boat);
  const [first] = tapeRows(index, plan, { currency: currencyOf(boat) });
  const [entry] = plan.tape;
  if (first === undefined || entry === undefined) return undefined;
  const ends = index.ways.get(entry.about)?.ends ?? [];
  const where = ends.map((end) => shortName(index.places.get(end)?.name ?? end)).join(' to ');
  return {
    id: 'tape',
    step: 'boat',
    does: `Go aboard and tape or prove ${printCount(plan.tape.length, 'thing')} before you order.`,
    why: `${where === '' ? '' : `First ${where}: `}${printMoney(first.atStake)} ${currencyOf(boat)} of the order hang on it.`,
  };
};

const doubts: Look = ({ plan }) => {
  const open = openAt(plan, 'doubt');
  return open.length === 0
    ? undefined
    : {
        id: 'doubts',
        step: stepOfMost(open.map(({ rule }) => rule)),
        does: `Clear up ${printCount(open.length, 'doubt')}: look aboard, mend it, or accept it with a reason.`,
        why: 'What is in doubt now costs a second trip later.',
      };
};

const order: Look = ({ boat, plan }) => {
  const stands = new Map((boat.orders ?? []).map(({ item, state }) => [item, state]));
  const open = plan.shopping.filter(({ id }) => (stands.get(id) ?? 'order') === 'order');
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

const start: Look = ({ boat, plan }) =>
  jobsOf(plan).length === 0 || (boat.work?.starts ?? []).length > 0
    ? undefined
    : {
        id: 'start',
        step: 'work',
        does: 'Say on which day the work begins.',
        why: 'Then the jobs get dates, and every part a last day to order it.',
      };

const jobs: Look = ({ plan, done }) => {
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

const tests: Look = ({ plan, tested }) => {
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

const papers: Look = ({ boat }) =>
  (boat.revisions ?? []).length > 0
    ? undefined
    : {
        id: 'papers',
        step: 'binder',
        does: 'Give the papers out as revision A.',
        why: 'Whoever opens a locker in ten years then knows which drawing is the boat.',
      };

/** What makes a first plan, and what makes it sure, in the order of the job. A danger comes before anything that is done aboard. */
const looks: readonly Look[] = [
  places,
  kit,
  mended('danger', 'Nobody works on a boat while one is open.'),
  needs,
  wiring,
  mended('fault', 'As it stands she would not work, or not within a published limit.'),
  missing,
  unfed,
  tape,
  doubts,
  order,
  start,
  jobs,
  tests,
  papers,
];

/** Everything that is to be done at a boat, the next sensible thing first. */
export const nextThings = (asked: NextAsked): readonly NextThing[] =>
  looks.flatMap((look) => {
    const thing = look(asked);
    return thing === undefined ? [] : [thing];
  });
