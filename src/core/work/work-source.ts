import type { BoatIndex } from '../boat/boat-index.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { rememberFor } from '../boat/remember-for.ts';
import { withoutNeeds } from '../joins/standing-boat.ts';
import type { JobsInput, LaidWork, WorkedPlan } from './jobs/job-frame.ts';

/** What a person says of the work, and what of a quote and of photos jobs look at: no line and no way hangs on them. */
const saidOf = ({ work, quote, photos }: Boat): Pick<Boat, 'work' | 'quote' | 'photos'> => ({
  ...(work === undefined ? {} : { work }),
  ...(quote === undefined ? {} : { quote }),
  ...(photos === undefined ? {} : { photos }),
});

type Fleeting = Omit<WorkedPlan, keyof LaidWork>;

/** What jobs look at of a plan beside what is laid: made anew with every plan, and small. */
const fleetingOf = ({ buses, readings, before, shopping, shipPapers, tests, phases }: WorkedPlan): Fleeting => ({
  buses: buses.map(({ id, grade }) => ({ id, grade })),
  readings: readings
    .filter(({ arrives }) => arrives)
    .map(({ reading, at, arrives, by, backups }) => ({ reading, at, arrives, by, backups })),
  before: before.map(({ reading, at, by }) => ({ reading, at, by })),
  shopping: shopping.map(({ id, item, kind, count, by, each, for: things }) => ({
    ...{ id, item, kind, count, by, for: things },
    ...(each === undefined ? {} : { each }),
  })),
  shipPapers,
  ...(tests === undefined
    ? {}
    : {
        tests: tests.map(({ id, group, what, about, reading }) => ({
          ...{ id, group, about },
          ...(what === undefined ? {} : { what }),
          ...(reading === undefined ? {} : { reading }),
        })),
      }),
  ...(phases === undefined ? {} : { phases: { phases: phases.phases.map(({ phase, buy }) => ({ phase, buy })) } }),
});

const laidPart = ({ joins, lines, ways, passages, masts, panels, fits }: LaidWork): LaidWork => ({
  ...{ joins, lines, ways, passages, masts, panels, fits },
});

interface Asked {
  readonly index: BoatIndex;
  readonly said: Pick<Boat, 'work' | 'quote' | 'photos'>;
  readonly fleeting: Fleeting;
}

const sourceWith = (laid: LaidWork, { index, said, fleeting }: Asked): JobsInput => ({
  index: { ...index, boat: { ...withoutNeeds(index.boat), ...said } },
  plan: { ...laidPart(laid), ...fleeting },
});

const knownSource = rememberFor({
  most: 3,
  keyOf: ({ said, fleeting }: Asked) => JSON.stringify([said, fleeting]),
  find: sourceWith,
});

/**
 * All that the jobs of a refit are made from, and nothing else: what is not in it they cannot hang on. With `laid`, what
 * `planLaid` keeps for this boat without her needs, it is the very same object for as long as nothing in it is otherwise, so that
 * what hangs on it can be kept for it.
 */
export const workSource = ({ index, plan, laid }: JobsInput & { readonly laid?: LaidWork }): JobsInput => {
  const asked = { index, said: saidOf(index.boat), fleeting: fleetingOf(plan) };
  return laid === undefined ? sourceWith(plan, asked) : knownSource(laid, asked);
};
