import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import type { Finding } from '../../plan-shape.ts';
import type { SensorCheck, SensorInput } from '../../sensor-shape.ts';
import type { Rule } from '../rule.ts';
import { findingsOf, type RuleCase } from '../rule-case.test-helper.ts';

interface SensorCase {
  readonly checks?: readonly SensorCheck[];
  readonly inputs?: readonly SensorInput[];
  readonly boat?: Boat;
}

/** One unit of the Tern, here its compass, that sits as said. */
export const sensorCase = ({ checks = [], inputs = [], boat = aBoat().boat }: SensorCase): RuleCase => ({
  boat,
  plan: {
    sites: [
      {
        unit: 'compass',
        is: 'depth',
        place: 'locker',
        aboveWaterM: -0.5,
        sensor: { checks: [...checks], inputs: [...inputs] },
      },
    ],
  },
});

/** What a rule finds where one unit of the Tern sits as said. */
export const sensorFindings = (rule: Rule, given: SensorCase): Finding[] => findingsOf(rule, sensorCase(given));
