import type { Fault } from '../../fault.ts';
import { spot, withFluxgate, withSited } from '../../sited-units.ts';

/** A fluxgate in the bow, 0.6 m from the bow thruster and its cables. */
export const compassHeadingSensorTooNear: Fault = {
  rule: 'compass/heading-sensor-too-near',
  about: ['bow-fluxgate', 'tunnel-thruster'],
  plant: (boat) =>
    withSited(
      withFluxgate(boat, {
        id: 'bow-fluxgate',
        name: 'fluxgate in the bow',
        place: spot('bow-shelf', 'shelf in the bow', [10.3, 0, 0.3]),
      }),
      {
        kit: { id: 'tunnel-thruster', name: 'bow thruster', fate: 'stays' },
        place: spot('thruster-tunnel', 'tunnel of the bow thruster', [10.9, 0, 0.3]),
        sheet: { kind: 'thruster', compassSafe: { valueM: 0.5, how: 'papers' } },
      },
    ),
};
