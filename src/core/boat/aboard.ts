import * as z from 'zod';

/** One thing that is set in a unit, as its menu names it and as it stands there. */
export const settingSchema = z.strictObject({
  name: z.string().min(1).max(80),
  value: z.string().min(1).max(400),
});
export type Setting = z.infer<typeof settingSchema>;

/** What is read off a unit as it hangs aboard: from its label, and from its menus before it is switched off. */
export const aboardSchema = z
  .strictObject({
    serial: z.exactOptional(z.string().min(1).max(80)),
    software: z.exactOptional(z.string().min(1).max(80)),
    settings: z.exactOptional(
      z
        .array(settingSchema)
        .min(1)
        .max(200)
        .refine((settings) => new Set(settings.map(({ name }) => name)).size === settings.length, {
          message: 'A setting stands once.',
        }),
    ),
    /** all that has to outlive it was copied, here or to a card */
    copied: z.exactOptional(z.boolean()),
  })
  .meta({ id: 'Aboard' });
