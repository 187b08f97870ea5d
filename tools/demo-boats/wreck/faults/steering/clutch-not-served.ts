import type { Fault } from '../../fault.ts';
import { withPilot } from '../../pilot-units.ts';

/** A drive with a clutch on a computer that has no output for one. */
export const steeringClutchNotServed: Fault = {
  rule: 'steering/clutch-not-served',
  about: ['clutched-drive.motor', 'clutched-pilot.motor'],
  plant: (boat) =>
    withPilot(boat, {
      name: 'clutched',
      drive: { type: 'linear', clutchV: 12, clutchA: 1 },
      output: { clutch: { fitted: false } },
    }),
};
