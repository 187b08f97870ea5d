import { proofLimits } from '../../../facts/proof-limits.ts';
import type { Check } from '../check.ts';
import { atTime, bytesOf } from '../say.ts';
import { aboutSources, sourceKey, sourceWords, valuesOf } from '../value-words.ts';

/** A source that tells a variation of nothing at all, always. */
export const variationZero: Check = {
  id: 'variation-zero',
  title: 'A variation of exactly zero is told.',
  level: 'doubt',
  sources: ['practice-empty-variation'],
  find: (seen) =>
    valuesOf(seen).flatMap((values) =>
      values.book
        .sources()
        .filter(
          ({ kind, zeros, count }) =>
            kind === 'variation' && zeros === count && count >= proofLimits.intervalsToMiss.value,
        )
        .map((source) => ({
          about: aboutSources(values, [source]),
          apart: sourceKey(source),
          says: `${sourceWords(seen, values, source)} tells a variation of exactly 0°, ${source.count} times: an empty field read as zero, or never set.`,
          device: sourceWords(seen, values, source),
          message: source.message,
          ...atTime(source.lastUs),
          ...bytesOf(source.message, source.bytes),
          cure: 'Compare with the chart. Set the variation to automatic in the unit that knows the position, and stop this one.',
        })),
    ),
};
