import * as z from 'zod';
import { coaxKindIds } from '../facts/coax.ts';

export const coaxKindSchema = z.enum(coaxKindIds);

/** What is known of a coax that is aboard. */
export const cableCoaxSchema = z.strictObject({
  /** as printed on its jacket */
  kind: z.exactOptional(coaxKindSchema),
  /** loss of this very part by its data sheet; beats what its kind usually loses */
  losses: z.exactOptional(
    z
      .array(
        z.strictObject({
          mhz: z.number().positive().max(10_000).meta({ unit: 'MHz' }),
          dbPer100M: z.number().positive().max(1000).meta({ unit: 'dB for 100 m' }),
        }),
      )
      .min(1)
      .max(12)
      .refine((losses) => new Set(losses.map(({ mhz }) => mhz)).size === losses.length, {
        message: 'The losses of a coax have each frequency once.',
      }),
  ),
  /** `dry`: each of its joints was opened and found dry and bright */
  joints: z.exactOptional(z.enum(['dry', 'weathered'])),
});
