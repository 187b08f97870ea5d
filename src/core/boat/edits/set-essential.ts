import * as z from 'zod';
import { suppliedFunctions } from '../../facts/essential-functions.ts';
import { dottedIdSchema, idSchema } from '../ids.ts';
import { changeWork } from './change-work.ts';
import { defineEdit } from './define-edit.ts';

/** Says which circuits or banks give an essential function, or that she has none; with neither nothing is said of it. */
export const setEssential = defineEdit({
  id: 'set-essential',
  params: z
    .strictObject({
      function: z.enum(suppliedFunctions),
      on: z.exactOptional(z.array(z.union([dottedIdSchema, idSchema])).min(1)),
      none: z.exactOptional(z.literal(true)),
    })
    .refine(({ on, none }) => on === undefined || none === undefined, {
      message: 'Either it hangs on something, or she has none.',
    }),
  title: ({ function: what, on, none }) => {
    const name = what.replaceAll('-', ' ');
    if (none === true) return `She has no ${name}.`;
    return on === undefined ? `Nobody said what gives the ${name}.` : `The ${name} hangs on ${on.join(', ')}.`;
  },
  change: (boat, essential) =>
    changeWork(boat, (work) => {
      const others = (work.essentials ?? []).filter((one) => one.function !== essential.function);
      const isSaid = essential.on !== undefined || essential.none !== undefined;
      work.essentials = isSaid ? [...others, essential] : others;
    }),
});
