import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { withFedUnit } from '../../fed-unit.ts';

/** A twelve-inch display at the end of 14 m of 0.75 mm². */
export const powerDropTooBig: Fault = {
  rule: 'power/drop-too-big',
  about: ['c-wide-display', 'wide-display.dc'],
  plant: (boat) =>
    withFedUnit(boat, {
      kit: { id: 'wide-display', name: 'twelve-inch display', place: 'fore-locker', tail: taped(5.5) },
      maxA: 3,
      power: { typical: 2, max: 30, unit: 'W', behaves: 'power', minV: 10.8 },
      circuit: { ratingA: 5 },
      wireMm2: 0.75,
    }),
};
