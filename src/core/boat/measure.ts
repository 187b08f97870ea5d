import * as z from 'zod';
import { lengthDoubt } from '../facts/defaults.ts';

/** How a length is known. */
export const howSchema = z.enum(['taped', 'papers', 'guessed']);

/** A length in metres with its doubt: the truth lies between valueM - lessM and valueM + moreM. */
export const measureSchema = z
  .strictObject({
    valueM: z.number().min(0).max(1000).meta({ unit: 'm' }),
    how: howSchema,
    lessM: z.exactOptional(z.number().min(0).max(1000).meta({ unit: 'm' })),
    moreM: z.exactOptional(z.number().min(0).max(1000).meta({ unit: 'm' })),
  })
  .refine((measure) => (measure.lessM ?? 0) <= measure.valueM, {
    message: 'The length less its doubt would be below nothing; make lessM smaller.',
    path: ['lessM'],
  })
  .meta({ id: 'Measure' });
export type Measure = z.infer<typeof measureSchema>;

export interface LengthMm {
  readonly nominalMm: number;
  readonly shortestMm: number;
  readonly longestMm: number;
}

/**
 * The three whole-millimetre lengths of a measure: mm = round(valueM x 1000), shortest = mm - round(lessM x 1000),
 * longest = mm + round(moreM x 1000). Doubt that is not given follows from how it is known (facts: lengthDoubt).
 *
 * @example lengthMm({ valueM: 2.4, how: 'taped', lessM: 0.05, moreM: 0.1 }) // 2400, 2350, 2500
 */
export const lengthMm = (measure: Measure): LengthMm => {
  const doubt = lengthDoubt[measure.how];
  const usual = (pct: number): number => Math.max((measure.valueM * pct) / 100 + doubt.plusM, doubt.atLeastM);
  const lessM = measure.lessM ?? Math.min(measure.valueM, usual(doubt.lessPct));
  const moreM = measure.moreM ?? usual(doubt.morePct);
  const nominalMm = Math.round(measure.valueM * 1000);
  return {
    nominalMm,
    shortestMm: nominalMm - Math.round(lessM * 1000),
    longestMm: nominalMm + Math.round(moreM * 1000),
  };
};
