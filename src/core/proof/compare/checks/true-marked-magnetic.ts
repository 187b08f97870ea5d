import type { Check } from '../check.ts';
import { isMarkedWrongly } from '../marked-wrongly.ts';
import { atTime, bytesOf, figure } from '../say.ts';
import { aboutSources, sourceKey, sourceWords, valuesOf } from '../value-words.ts';

/** Two headings that differ by just the variation: one of them says true and means magnetic, or the other way round. */
export const trueMarkedMagnetic: Check = {
  id: 'true-marked-magnetic',
  title: 'Two headings differ by exactly the variation.',
  level: 'fault',
  sources: ['choice-proof'],
  find: (seen) =>
    valuesOf(seen).flatMap((values) =>
      values.book
        .pairs()
        .filter((pair) => isMarkedWrongly(pair))
        .map(({ a, b, variations }) => ({
          about: aboutSources(values, [a, b]),
          apart: `${sourceKey(a)}:${sourceKey(b)}`,
          says: `The headings of ${sourceWords(seen, values, a)} (marked ${a.last.reference}) and ${sourceWords(seen, values, b)} (marked ${b.last.reference}) differ by ${figure(Math.abs(variations.median() ?? 0))}°, which is just the variation: one of them is marked wrongly.`,
          device: sourceWords(seen, values, b),
          message: b.message,
          ...atTime(b.lastUs),
          ...bytesOf(b.message, b.bytes),
          cure: 'See which agrees with the steering compass and the chart. Set the other to send magnetic, or to what it really is.',
        })),
    ),
};
