import type { Fault } from '../../fault.ts';
import { withFedUnit } from '../../fed-unit.ts';

/** A lamp on telephone wire. */
export const powerWireUnderLeastSize: Fault = {
  rule: 'power/wire-under-least-size',
  about: ['bunk-lamp.dc', 'c-bunk-lamp'],
  plant: (boat) =>
    withFedUnit(boat, {
      kit: { id: 'bunk-lamp', name: 'lamp in the locker under the helm', place: 'helm-locker' },
      maxA: 0.2,
      wireMm2: 0.25,
    }),
};
