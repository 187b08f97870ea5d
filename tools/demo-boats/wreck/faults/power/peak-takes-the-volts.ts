import type { Fault } from '../../fault.ts';
import { withFedUnit } from '../../fed-unit.ts';

/** A sounder that draws ten times its current when it sends. */
export const powerPeakTakesTheVolts: Fault = {
  rule: 'power/peak-takes-the-volts',
  about: ['sounder-old.dc', 'c-sounder-old'],
  plant: (boat) =>
    withFedUnit(boat, {
      kit: { id: 'sounder-old', name: 'old sounder', place: 'bilge-well' },
      maxA: 1,
      power: { peak: 10, minV: 10.8 },
      circuit: { ratingA: 10, kind: 'slow-breaker' },
      wireMm2: 1.5,
    }),
};
