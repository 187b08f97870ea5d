import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { withFedUnit } from '../../fed-unit.ts';
import { spot, withFluxgate, withSited } from '../../sited-units.ts';

/** A fluxgate a hand’s breadth from the cables of a deck lamp. */
export const compassWireTurnsHeadingSensor: Fault = {
  rule: 'compass/wire-turns-heading-sensor',
  about: ['sprit-fluxgate', 'deck-lamp'],
  plant: (boat) =>
    withFedUnit(
      withSited(
        withFluxgate(boat, {
          id: 'sprit-fluxgate',
          name: 'fluxgate under the bowsprit',
          place: spot('under-sprit', 'under the bowsprit', [16, 0.1, 0.8]),
        }),
        {
          kit: { id: 'sprit-end-ring', name: 'ring at the end of the bowsprit', fate: 'stays' },
          place: spot('sprit-end', 'end of the bowsprit', [20, 0, 0.8]),
          sheet: { kind: 'lamp', compassSafe: { valueM: 0.1, how: 'papers' } },
        },
      ),
      {
        kit: { id: 'deck-lamp', name: 'deck lamp at the end of the bowsprit', place: 'sprit-end', tail: taped(0.3) },
        maxA: 1.5,
        wireMm2: 16,
        sheet: { compassSafe: { valueM: 0.1, how: 'papers' } },
      },
    ),
};
