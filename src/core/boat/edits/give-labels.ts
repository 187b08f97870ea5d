import * as z from 'zod';
import { lineIdSchema } from '../ids.ts';
import { nextLabels } from '../next-labels.ts';
import { defineEdit } from './define-edit.ts';

/** Hands out labels to lines that have none, in the order of the lines. A label is for life: it stays in the file when its line is gone. */
export const giveLabels = defineEdit({
  id: 'give-labels',
  params: z.strictObject({ lines: z.array(lineIdSchema).min(1) }),
  title: ({ lines }) => `Give labels to ${lines.length === 1 ? 'one line' : `${lines.length} lines`}.`,
  change: (boat, { lines }) => {
    boat.labels = { ...boat.labels, ...nextLabels(boat.labels ?? {}, lines) };
  },
});
