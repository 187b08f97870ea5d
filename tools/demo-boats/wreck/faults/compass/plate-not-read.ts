import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { withFedUnit } from '../../fed-unit.ts';

/** A new lamp for the chart comes to the dash; nobody has looked at its magnet. */
export const compassPlateNotRead: Fault = {
  rule: 'compass/plate-not-read',
  about: ['compass', 'chart-lamp'],
  plant: (boat) =>
    withFedUnit(boat, {
      kit: {
        id: 'chart-lamp',
        name: 'chart lamp with a magnetic foot',
        place: 'helm',
        tail: taped(0.5),
        fate: 'comes',
      },
      maxA: 0.3,
    }),
};
