import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { withFedUnit } from '../../fed-unit.ts';
import { spot, withFluxgate } from '../../sited-units.ts';

/** A fluxgate in the box in which the cables of a lamp end. */
export const compassWireTurnsHeadingSensor: Fault = {
  rule: 'compass/wire-turns-heading-sensor',
  about: ['sprit-fluxgate', 'deck-lamp'],
  plant: (boat) =>
    withFedUnit(
      withFluxgate(boat, {
        id: 'sprit-fluxgate',
        name: 'fluxgate in the box of the lamp',
        place: spot('sprit-box', 'box under the stem', [11.8, 0.8, -1.3]),
      }),
      {
        kit: { id: 'deck-lamp', name: 'lamp under the stem', place: 'sprit-box', tail: taped(0.3) },
        maxA: 1.5,
        wireMm2: 16,
        sheet: { compassSafe: { valueM: 0, how: 'papers' } },
      },
    ),
};
