import * as z from 'zod';
import { idSchema } from '../ids.ts';
import { measureSchema } from '../measure.ts';
import { sortedBy } from '../sorted-by.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { withoutEmptyLists } from './leave-measures.ts';
import { nameInBoat } from './name-in-boat.ts';

/** Says how deep a transducer lies below the water; without `below` it is no longer said. */
export const setTransducer = defineEdit({
  id: 'set-transducer',
  params: z.strictObject({ unit: idSchema, below: z.exactOptional(measureSchema) }),
  title: ({ unit, below }, boat) =>
    below === undefined
      ? `How deep ${nameInBoat(boat.kit, unit)} lies is not known.`
      : `${nameInBoat(boat.kit, unit)} lies ${below.valueM} m below the water.`,
  change: (boat, { unit, below }) => {
    findInBoat(boat.kit, unit, 'unit');
    const others = (boat.measures?.transducers ?? []).filter((entry) => entry.unit !== unit);
    const transducers = sortedBy([...others, ...(below === undefined ? [] : [{ unit, below }])], (entry) => [
      entry.unit,
    ]);
    boat.measures = { ...boat.measures, transducers };
    withoutEmptyLists(boat, 'measures');
  },
});
