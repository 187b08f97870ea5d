import * as z from 'zod';
import { watersSchema } from '../waters.ts';
import { defineEdit } from './define-edit.ts';

const names = { quiet: 'quiet waters', coast: 'a coast', harbour: 'a busy harbour' } as const;

/** Says how many other ships the boat is planned to hear; without `waters` as many as usual. */
export const setWaters = defineEdit({
  id: 'set-waters',
  params: z.strictObject({ waters: z.exactOptional(watersSchema) }),
  title: ({ waters }) =>
    waters === undefined ? 'Plan for as many ships as usual.' : `Plan for the ships of ${names[waters]}.`,
  change: (boat, { waters }) => {
    if (waters === undefined) delete boat.waters;
    else boat.waters = waters;
  },
});
