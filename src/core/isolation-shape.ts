import * as z from 'zod';

// The part of a plan that tells of metal that meets where it should not, and of shields.
const id = z.string();

const bondKinds = ['case', 'poles', 'mount', 'mast', 'braid', 'shield', 'signal', 'water'] as const;

/** One joint of two conductors. A conductor is `hull`, `water`, or `negative:`, `body:`, `braid:`, `shield:` or `mast:` and what it is of. */
export const bondSchema = z.strictObject({
  id,
  ends: z.tuple([id, id]),
  kind: z.enum(bondKinds),
  /** units, lines or buses it is at */
  about: z.array(id),
  says: z.string(),
  /** said in the boat file or by a manual; else as such units usually are */
  sure: z.boolean(),
});
export type BondEntry = z.infer<typeof bondSchema>;

/**
 * One way by which a negative meets what it should not: the hull (on a hull that is not of metal the water), another supply’s
 * negative, or an engine with isolated poles. `bonds` in order, from the negative on; the cure parts one of them.
 */
export const strayWaySchema = z.strictObject({
  id,
  meets: z.enum(['hull', 'water', 'supply', 'engine']),
  from: id,
  to: id,
  bonds: z.array(bondSchema).min(1),
  sure: z.boolean(),
  cure: z.exactOptional(
    z.strictObject({
      bond: id,
      says: z.string(),
      cost: z.exactOptional(z.int().meta({ unit: 'hundredths of the currency' })),
    }),
  ),
});
export type StrayWay = z.infer<typeof strayWaySchema>;

/** Banks and converters that share one negative. */
export const negativeSchema = z.strictObject({ id, nominalV: z.number().meta({ unit: 'V' }), sources: z.array(id) });
export type NegativeEntry = z.infer<typeof negativeSchema>;

/** The shields that are one piece of metal, by the buses or joins they are of, and where they meet earth. */
export const shieldEntrySchema = z.strictObject({
  id,
  of: z.array(id),
  kind: z.enum(['bus', 'ethernet', 'cable']),
  earths: z.array(z.strictObject({ at: id, by: z.enum(['file', 'unit']), says: z.string() })),
  /** `planned`: nobody has said where, and the plan earths it at the feed or the talker */
  verdict: z.enum(['once', 'twice', 'nowhere', 'planned']),
  plannedAt: z.exactOptional(id),
});
export type ShieldEntry = z.infer<typeof shieldEntrySchema>;

export const isolationSchema = z.strictObject({
  hull: z.enum(['metal', 'other']),
  /** the one point where negative may meet hull or water */
  point: z.exactOptional(id),
  negatives: z.array(negativeSchema),
  ways: z.array(strayWaySchema),
  shields: z.array(shieldEntrySchema),
  /** units on a metal hull whose metal nobody has looked at */
  unknown: z.array(id),
});
export type IsolationEntry = z.infer<typeof isolationSchema>;
