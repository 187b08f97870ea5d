import * as z from 'zod';
import { fittedSchema } from '../fitted.ts';
import { defineEdit } from './define-edit.ts';

const { id: _, ...given } = fittedSchema.shape;

/** The first number that no difference has. */
const freeId = (taken: ReadonlySet<string>): string => {
  let number = taken.size + 1;
  while (taken.has(`d${number}`)) number += 1;
  return `d${number}`;
};

/** Notes one difference between the plan and the boat as she was found after the work. */
export const noteFitted = defineEdit({
  id: 'note-fitted',
  params: z.strictObject(given),
  title: ({ about, is }) => `As fitted, ${about}: ${is}.`,
  change: (boat, difference) => {
    const before = boat.fitted ?? [];
    boat.fitted = [...before, { id: freeId(new Set(before.map(({ id }) => id))), ...difference }];
  },
});
