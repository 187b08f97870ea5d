import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import type { Finding } from '../../plan-shape.ts';
import type { SensorCheck, SensorInput } from '../../sensor-shape.ts';
import type { Rule } from '../rule.ts';
import { findingsOf } from '../rule-case.test-helper.ts';

interface SensorCase {
  readonly checks?: readonly SensorCheck[];
  readonly inputs?: readonly SensorInput[];
  readonly boat?: Boat;
}

/** What a rule finds where one unit of the Tern, here its compass, sits as said. */
export const sensorFindings = (rule: Rule, { checks = [], inputs = [], boat = aBoat().boat }: SensorCase): Finding[] =>
  findingsOf(rule, {
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
