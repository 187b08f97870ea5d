import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { TestLimits } from '../../core/proof/dock/judge.ts';
import type { TestEntry } from '../../core/tests-shape.ts';
import { cardBoat } from '../cards/card-boat.ts';
import { expectWords, testPlace, testWords } from '../proof/test-words.ts';

/** One test as a phone shows it, with what it is judged by. */
export interface PhoneTest extends TestLimits, Pick<TestEntry, 'id' | 'group' | 'kind' | 'power'> {
  /** the bus by its name, where it is a test of one */
  readonly bus?: string;
  readonly what: string;
  readonly where: string;
  readonly expect: string;
  /** tests that come before it */
  readonly after?: readonly string[];
}

/** The tests of a plan in their order, each with its words. */
export const phoneTests = (boat: Boat, plan: Pick<Plan, 'tests'>): PhoneTest[] => {
  const index = cardBoat(boat);
  return plan.tests.map((entry): PhoneTest => {
    const { id, group, kind, power, test, unit, right, passes, under, like, after } = entry;
    const bus = group === 'bus' ? index.buses.get(entry.about[0] ?? '')?.name : undefined;
    return {
      id,
      group,
      kind,
      power,
      test,
      ...(unit === undefined ? {} : { unit }),
      ...(right === undefined ? {} : { right }),
      ...(passes === undefined ? {} : { passes }),
      ...(under === undefined ? {} : { under }),
      ...(like === undefined ? {} : { like }),
      ...(after === undefined ? {} : { after }),
      ...(bus === undefined ? {} : { bus }),
      what: testWords(index, entry),
      where: testPlace(index, entry),
      expect: expectWords(index, entry),
    };
  });
};
