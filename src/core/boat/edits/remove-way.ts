import * as z from 'zod';
import { idSchema } from '../ids.ts';
import { defineEdit } from './define-edit.ts';
import { fewInWords } from './few-in-words.ts';
import { findInBoat } from './find-in-boat.ts';
import { takeWaysOut, throughInWords } from './take-ways-out.ts';
import { wayInWords } from './way-in-words.ts';

/** Takes a way out of the boat. What ran through it is said; what was bought or fitted for it keeps it there. */
export const removeWay = defineEdit({
  id: 'remove-way',
  params: z.strictObject({ way: idSchema }),
  title: ({ way }, boat) => {
    const through = throughInWords(boat, new Set([way]));
    const told = through.length === 0 ? '' : ` ${fewInWords(through)} ran through it.`;
    return `Remove the way ${wayInWords(boat, way)}.${told.replace(/^ t/, ' T')}`;
  },
  change: (boat, { way }) => {
    findInBoat(boat.ways, way, 'way');
    takeWaysOut(boat, new Set([way]));
  },
});
