import * as z from 'zod';
import { pictureTypes } from './picture-limits.ts';

/** SHA-256 of the bytes of a picture, by which it is kept in the folder beside the boat file. */
const pictureHashSchema = z
  .string()
  .regex(/^[0-9a-f]{64}$/, 'A picture is named by the SHA-256 of its bytes, 64 hexadecimal digits in small letters.');

/** One picture beside the boat file: which, of what type, and its size as it is shown. */
export const pictureSchema = z.strictObject({
  hash: pictureHashSchema,
  type: z.enum(pictureTypes),
  widthPx: z.int().min(1).max(10_000).meta({ unit: 'pixels' }),
  heightPx: z.int().min(1).max(10_000).meta({ unit: 'pixels' }),
});
export type Picture = z.infer<typeof pictureSchema>;
export type PictureType = Picture['type'];
