import * as z from 'zod';
import type { atSeaSchema } from '../at-sea.ts';
import { idSchema } from '../ids.ts';
import { UserError } from '../user-error.ts';
import { defineEdit } from './define-edit.ts';
import { withoutEmptyLists } from './leave-measures.ts';

const kinds = [
  'logs',
  'winds',
  'leads',
  'swings',
  'bridges',
] as const satisfies readonly (keyof typeof atSeaSchema.shape)[];

/** Takes one trial at sea back: what was set by it is computed from the measures again. */
export const takeBackAtSea = defineEdit({
  id: 'take-back-at-sea',
  params: z.strictObject({ kind: z.enum(kinds), id: idSchema }),
  title: () => 'Take a trial at sea back.',
  change: (boat, { kind, id }) => {
    const list: { id: string }[] = boat.sea?.[kind] ?? [];
    const at = list.findIndex((entry) => entry.id === id);
    if (at < 0)
      throw new UserError({
        says: `There is no trial "${id}" among the ${kind}.`,
        whatToDo: 'Name one that is noted.',
      });
    list.splice(at, 1);
    withoutEmptyLists(boat, 'sea');
  },
});
