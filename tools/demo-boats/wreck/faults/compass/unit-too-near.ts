import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { withFedUnit } from '../../fed-unit.ts';

/** A loudspeaker in the face of the dash, whose sheet wants it two and a half metres off. */
export const compassUnitTooNear: Fault = {
  rule: 'compass/unit-too-near',
  about: ['compass', 'dash-speaker'],
  plant: (boat) =>
    withFedUnit(boat, {
      kit: { id: 'dash-speaker', name: 'loudspeaker in the dash', place: 'helm', tail: taped(0.5) },
      maxA: 1,
      sheet: { kind: 'loudspeaker', earthing: { body: 'plastic' }, compassSafe: { valueM: 2.55, how: 'papers' } },
    }),
};
