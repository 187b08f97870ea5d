import * as z from 'zod';
import { dottedIdSchema, idSchema } from './ids.ts';

/** One way to get the helm back from the pilot; `at` a place, absent where one steers, or where the panel of the circuit is. */
const letGoSchema = z.strictObject({
  how: z.enum(['hard-wired-switch', 'lever', 'breaker', 'pilot-head', 'remote']),
  at: z.exactOptional(idSchema),
  circuit: z.exactOptional(dottedIdSchema),
});
export type LetGo = z.infer<typeof letGoSchema>;

/** One place the boat can be steered from, and how the pilot is made to let go there. */
const steeringPlaceSchema = z.strictObject({
  place: idSchema,
  by: z.enum(['wheel', 'tiller', 'joystick', 'emergency-tiller']),
  letsGo: z.array(letGoSchema),
});
export type SteeringPlace = z.infer<typeof steeringPlaceSchema>;

/** Every place the boat can be steered from; each once by each means. */
export const steeringSchema = z
  .array(steeringPlaceSchema)
  .refine((places) => new Set(places.map(({ place, by }) => `${place} ${by}`)).size === places.length, {
    message: 'A steering place stands in the list once for each means of steering.',
  });
