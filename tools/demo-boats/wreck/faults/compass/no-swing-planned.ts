import { withUnit } from '../../edits.ts';
import type { Fault } from '../../fault.ts';
import { spot, withSited } from '../../sited-units.ts';

/** A new stereo on the dash top, at its plate distance, and nobody plans to swing the compass. */
export const compassNoSwingPlanned: Fault = {
  rule: 'compass/no-swing-planned',
  about: ['compass'],
  plant: (boat) =>
    withSited(
      withUnit(boat, 'compass', ({ site: _, ...unit }) => unit),
      {
        kit: { id: 'dash-stereo', name: 'new stereo on the dash top', fate: 'comes' },
        place: spot('dash-top', 'dash top beside the compass', [5.7, 0.5, 1.8]),
        sheet: { kind: 'audio', compassSafe: { valueM: 0.3, how: 'papers' } },
      },
    ),
};
