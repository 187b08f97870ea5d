import type { Fault } from '../../fault.ts';
import { withFedUnit } from '../../fed-unit.ts';

/** Fifteen amperes on 1 mm² through the engine space. */
export const powerFuseOverWire: Fault = {
  rule: 'power/fuse-over-wire',
  about: ['blower.dc', 'c-blower'],
  plant: (boat) =>
    withFedUnit(boat, {
      kit: { id: 'blower', name: 'blower of the engine space', place: 'engine-room' },
      maxA: 2,
      circuit: { ratingA: 15 },
      wireMm2: 1,
    }),
};
