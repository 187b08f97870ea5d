import type { Fault } from '../../fault.ts';
import { spot, withSited } from '../../sited-units.ts';

/** A wind head on the roof with a camera a foot beside it and higher. */
export const sensorsWindNotClear: Fault = {
  rule: 'sensors/wind-not-clear',
  about: ['roof-wind', 'roof-eye'],
  plant: (boat) =>
    withSited(
      withSited(boat, {
        kit: { id: 'roof-wind', name: 'wind head on the roof', fate: 'stays' },
        place: spot('wind-post', 'post of the wind head', [0.4, -0.9, 3.2]),
        sheet: { kind: 'wind-sensor', compassSafe: { valueM: 0.1, how: 'papers' } },
      }),
      {
        kit: { id: 'roof-eye', name: 'camera on the roof', fate: 'stays' },
        place: spot('eye-post', 'post of the camera', [0.4, -0.6, 3.4]),
        sheet: { kind: 'camera', compassSafe: { valueM: 0.1, how: 'papers' } },
      },
    ),
};
