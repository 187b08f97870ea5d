import type { Fault } from '../../fault.ts';

/** The draft of nine feet two was entered as metres. */
export const settingsMeasureInFeet: Fault = {
  rule: 'settings/measure-in-feet',
  about: [],
  plant: (boat) => ({ ...boat, hull: { ...boat.hull, draftM: 9.2 } }),
};
