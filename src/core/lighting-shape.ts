import * as z from 'zod';

// The part of a plan that tells which screens dim and fall silent together.
const id = z.string();

/**
 * The screens at one place. `group`: the first of the screens that dim with it, itself among them; absent for one with a
 * knob of its own, and where nobody has said which messages it dims by. `quietens` as of its sheet.
 */
export const lightingEntrySchema = z.strictObject({
  place: id,
  screens: z.array(
    z.strictObject({
      kit: id,
      dims: z.enum(['own-knob', 'with-group']),
      group: z.exactOptional(id),
      quietens: z.exactOptional(z.boolean()),
    }),
  ),
});
export type LightingEntry = z.infer<typeof lightingEntrySchema>;

/** What a plan says of screens in the dark. */
export const lightingEntriesSchema = { lighting: z.array(lightingEntrySchema) };
export type LightingParts = { readonly lighting: LightingEntry[] };
