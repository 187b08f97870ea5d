import * as z from 'zod';
import { compassEntrySchema } from './compass-shape.ts';
import { isolationSchema } from './isolation-shape.ts';

/** What a plan says of currents and fields that go where they should not. */
export const strayEntriesSchema = {
  compass: z.array(compassEntrySchema),
  isolation: isolationSchema,
};
