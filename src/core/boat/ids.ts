import * as z from 'zod';

/** An id in a boat file: lower-case letter first, then letters, digits, hyphens. */
export const idSchema = z
  .string()
  .regex(/^[a-z][a-z0-9-]*$/, 'An id starts with a small letter and holds small letters, digits and hyphens only.')
  .max(64)
  .meta({ id: 'Id' });

/** A name under which something stands in a boat file. A reader could take `__proto__` for more than a name, so nothing is called that. */
const keySchema = z
  .string()
  .min(1)
  .refine((name) => name !== '__proto__', 'Nothing in a boat file is called "__proto__".');

/** A line of the plan by the id that the plan gives it. */
export const lineIdSchema = keySchema.max(300);

/** A limit by its name in the list of limits. */
export const limitIdSchema = keySchema.max(80);

/** A reference to a port or a plug of a unit: `kit.port`. */
export const dottedIdSchema = z
  .string()
  .regex(/^[a-z][a-z0-9-]*\.[a-z][a-z0-9-]*$/, 'This is written unit.port, for example "mfd-helm.n2k".');

/** Splits `kit.port` at its dot. */
export const splitDotted = (dotted: string): { kit: string; part: string } => {
  const dot = dotted.indexOf('.');
  return { kit: dotted.slice(0, dot), part: dotted.slice(dot + 1) };
};

export { byCodeUnit } from '../units/by-code-unit.ts';
