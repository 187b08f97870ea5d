import type { Fault } from '../../fault.ts';
import { withPilot } from '../../pilot-units.ts';

/** A pump for 24 V was bought for a boat of 12 V. */
export const steeringMotorVoltsDiffer: Fault = {
  rule: 'steering/motor-volts-differ',
  about: ['high-drive.motor', 'high-pilot.motor'],
  plant: (boat) => withPilot(boat, { name: 'high', drive: { motorV: 24 } }),
};
