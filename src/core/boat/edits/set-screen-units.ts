import { screenUnitsSchema } from '../measures.ts';
import { sortedBy } from '../sorted-by.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { withoutEmptyLists } from './leave-measures.ts';
import { nameInBoat } from './name-in-boat.ts';

/** Says in what units a screen shows things, in place of all that was said of it; nothing forgets it. */
export const setScreenUnits = defineEdit({
  id: 'set-screen-units',
  params: screenUnitsSchema,
  title: ({ unit, ...said }, boat) => {
    const units = Object.values(said);
    return `${nameInBoat(boat.kit, unit)} shows ${units.length === 0 ? 'units nobody looked at' : units.join(', ')}.`;
  },
  change: (boat, { unit, ...said }) => {
    findInBoat(boat.kit, unit, 'unit');
    const others = (boat.measures?.screens ?? []).filter((entry) => entry.unit !== unit);
    const own = Object.keys(said).length === 0 ? [] : [{ unit, ...said }];
    boat.measures = { ...boat.measures, screens: sortedBy([...others, ...own], (entry) => [entry.unit]) };
    withoutEmptyLists(boat, 'measures');
  },
});
