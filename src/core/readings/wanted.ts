import type { Need } from '../boat/boat-schema.ts';
import type { Hears, Reference } from '../boat/sheet.ts';
import type { Signal } from './signal.ts';

/** In which way a signal that is heard falls short of what is wanted. */
export type Shortfall = 'wrong-instance' | 'wrong-reference' | 'no-offset' | 'too-slow';

/** What a need and the screen's own `wants` ask for together, the stricter of the two. */
export interface Wanted {
  readonly instance: number | undefined;
  readonly everyMs: number | undefined;
  /** two different ones are a contradiction that no signal can meet */
  readonly references: readonly Reference[];
  readonly withOffset: boolean;
}

/** The stricter of a need and one entry of the `hears` that takes the signal in; a unit's own reading has no entry. */
export const wantedOf = (need: Need, heard?: Hears): Wanted => {
  const rates = [need.everyMs, heard?.wants?.everyMs].filter((rate) => rate !== undefined);
  const references = [need.reference, heard?.wants?.reference].filter((reference) => reference !== undefined);
  return {
    instance: need.instance,
    everyMs: rates.length === 0 ? undefined : Math.min(...rates),
    references: [...new Set(references)],
    withOffset: need.withOffset === true || heard?.wants?.withOffset === true,
  };
};

const isTurnable = (reference: Reference): boolean => reference === 'true' || reference === 'magnetic';

const isReference = (signal: Signal, wanted: Reference, hasVariation: boolean): boolean => {
  if (signal.reference === undefined || signal.reference === wanted) return true;
  // True heading is magnetic heading and variation, so a screen that has both has either.
  return hasVariation && signal.reference !== 'lost' && isTurnable(signal.reference) && isTurnable(wanted);
};

/** Everything in which a signal falls short; empty when it meets what is wanted. */
export const shortfalls = (signal: Signal, wanted: Wanted, hasVariation: boolean): Shortfall[] => {
  const short: Shortfall[] = [];
  if (wanted.instance !== undefined && signal.instance !== wanted.instance) short.push('wrong-instance');
  const fits = wanted.references.every((reference) => isReference(signal, reference, hasVariation));
  if (wanted.references.length > 1 || !fits) short.push('wrong-reference');
  if (wanted.withOffset && signal.withOffset === false) short.push('no-offset');
  if (wanted.everyMs !== undefined && (signal.everyMs ?? 0) > wanted.everyMs) short.push('too-slow');
  return short;
};
