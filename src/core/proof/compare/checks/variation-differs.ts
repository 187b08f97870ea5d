import { proofLimits } from '../../../facts/proof-limits.ts';
import type { Check } from '../check.ts';
import { atTime, bytesOf, figure } from '../say.ts';
import { aboutSources, sourceKey, sourceWords, valuesOf } from '../value-words.ts';

/** Several variations on one boat. */
export const variationDiffers: Check = {
  id: 'variation-differs',
  title: 'Several sources tell different variations.',
  level: 'doubt',
  sources: ['choice-proof'],
  find: (seen) =>
    valuesOf(seen).flatMap((values) =>
      values.book.pairs().flatMap(({ a, b, differences }) => {
        const apart = differences.median();
        if (a.kind !== 'variation' || apart === undefined) return [];
        if (Math.abs(apart) <= proofLimits.variationApart.value) return [];
        return [
          {
            about: aboutSources(values, [a, b]),
            apart: `${sourceKey(a)}:${sourceKey(b)}`,
            says: `Variation of ${sourceWords(seen, values, a)} is ${figure(a.last.value)}°, of ${sourceWords(seen, values, b)} ${figure(b.last.value)}° (east positive); the limit between two is ${proofLimits.variationApart.value}°.`,
            device: sourceWords(seen, values, b),
            message: b.message,
            ...atTime(b.lastUs),
            ...bytesOf(b.message, b.bytes),
            cure: 'Let one unit tell the variation, set to automatic, and switch it off or to automatic in the others.',
          },
        ];
      }),
    ),
};
