import * as z from 'zod';
import { lineIdSchema } from '../ids.ts';
import { defineEdit } from './define-edit.ts';
import { withoutPin } from './without-pin.ts';

/** Lets the plan choose again which way a line goes. */
export const unpinRoute = defineEdit({
  id: 'unpin-route',
  params: z.strictObject({ line: lineIdSchema }),
  title: ({ line }) => `${line} may go any way again.`,
  change: (boat, { line }) => withoutPin(boat, 'routes', line),
});
