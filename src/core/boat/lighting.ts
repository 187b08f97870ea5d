import * as z from 'zod';

/** How a screen is dimmed and its alarm silenced; what is left out is not known. */
export const lightingSchema = z
  .strictObject({
    /** by a knob of its own, or with the screens of its maker on the same bus or network */
    dims: z.enum(['own-knob', 'with-group']),
    /** the maker’s own messages it dims by */
    dialect: z.exactOptional(
      z.string().regex(/^maker-[a-z]\/([0-9]+|unknown)$/, 'A dialect is written maker-a/2, or maker-a/unknown.'),
    ),
    /** whether an alarm silenced on one screen of the group falls silent on it too */
    quietens: z.exactOptional(z.boolean()),
  })
  .meta({ id: 'Lighting' });
