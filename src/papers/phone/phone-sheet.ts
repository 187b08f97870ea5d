import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { cautionsNamed, type PhoneCaution } from './phone-cautions.ts';
import type { PhoneDay } from './phone-day.ts';
import { type PhoneStop, phoneStops } from './phone-stops.ts';
import { type PhoneTest, phoneTests } from './phone-tests.ts';

/** All that a phone shows of one boat: words and figures ready to be read, and the ids under which it writes into the log. */
export interface PhoneSheet {
  readonly name: string;
  /** the days of the work in their order; absent while the plan has no order of it */
  readonly days?: readonly PhoneDay[];
  /** in the order in which they are done */
  readonly tests: readonly PhoneTest[];
  /** in the order in which one walks round her */
  readonly stops: readonly PhoneStop[];
  /** by id, those that tests and stops name */
  readonly cautions: Readonly<Record<string, PhoneCaution>>;
}

/**
 * What is handed to a phone of a boat and her plan. It holds no serial number, no setting and no password: a phone is lost
 * more easily than a laptop. Pure.
 */
export const phoneSheet = (boat: Boat, plan: Plan): PhoneSheet => {
  const stops = phoneStops(boat);
  return {
    name: boat.name,
    tests: phoneTests(boat, plan),
    stops,
    cautions: cautionsNamed(stops.flatMap((stop) => stop.cautions)),
  };
};
