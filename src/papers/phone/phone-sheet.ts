import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { cautionsNamed, type PhoneCaution } from './phone-cautions.ts';
import type { PhoneWork } from './phone-day.ts';
import { type PhoneStop, phoneStops } from './phone-stops.ts';
import { type PhoneTest, phoneTests } from './phone-tests.ts';
import { phoneWork } from './phone-work.ts';

/** All that a phone shows of one boat: words and figures ready to be read, and the ids under which it writes into the log. */
export interface PhoneSheet {
  readonly name: string;
  /** absent while the plan has no order of the work */
  readonly work?: PhoneWork;
  /** in the order in which they are done */
  readonly tests: readonly PhoneTest[];
  /** in the order in which one walks round her */
  readonly stops: readonly PhoneStop[];
  /** by id, those that jobs and stops name */
  readonly cautions: Readonly<Record<string, PhoneCaution>>;
}

/**
 * What is handed to a phone of a boat and her plan, with the ids of jobs that are done. It holds no serial number, no setting and no password: a phone is lost
 * more easily than a laptop. Pure.
 */
export const phoneSheet = (boat: Boat, plan: Plan, done: ReadonlySet<string> = new Set()): PhoneSheet => {
  const stops = phoneStops(boat);
  const work = phoneWork(boat, plan, done);
  const cautioned = [...stops, ...(work?.days ?? []).flatMap(({ jobs }) => jobs)];
  return {
    name: boat.name,
    ...(work === undefined ? {} : { work }),
    tests: phoneTests(boat, plan),
    stops,
    cautions: cautionsNamed(cautioned.flatMap(({ cautions }) => cautions)),
  };
};
