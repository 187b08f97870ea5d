import type { Fault } from '../../fault.ts';
import { withFedUnit } from '../../fed-unit.ts';

/** A switch for cameras whose maker asks for more volts than the panel itself has when the battery is low. */
export const powerNoWireDoes: Fault = {
  rule: 'power/no-wire-does',
  about: ['camera-switch.dc', 'c-camera-switch'],
  plant: (boat) =>
    withFedUnit(boat, {
      kit: { id: 'camera-switch', name: 'switch that feeds cameras', place: 'stern-locker' },
      maxA: 2,
      power: { minV: 11.75 },
    }),
};
