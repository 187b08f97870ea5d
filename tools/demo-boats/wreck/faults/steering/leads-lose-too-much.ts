import type { Fault } from '../../fault.ts';
import { withPilot } from '../../pilot-units.ts';

/** Nine metres of 2.5 mm² to a drive of medium size. */
export const steeringLeadsLoseTooMuch: Fault = {
  rule: 'steering/leads-lose-too-much',
  about: ['thin-drive.motor', 'thin-pilot.motor'],
  plant: (boat) => withPilot(boat, { name: 'thin', drive: { runA: 6, peakA: 10 }, lead: { areaMm2: 2.5, lengthM: 9 } }),
};
