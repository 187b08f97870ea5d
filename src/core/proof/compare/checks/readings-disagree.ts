import type { Figure } from '../../../facts/figure.ts';
import { proofLimits } from '../../../facts/proof-limits.ts';
import type { Check } from '../check.ts';
import type { ComparedKind } from '../compared-values.ts';
import { isMarkedWrongly } from '../marked-wrongly.ts';
import { atTime, bytesOf, figure, lengthWords } from '../say.ts';
import { aboutSources, sourceKey, sourceWords, valuesOf } from '../value-words.ts';

interface Compared {
  readonly words: string;
  readonly limit: Figure;
  readonly unit: string;
}

const compared: ReadonlyMap<ComparedKind, Compared> = new Map([
  ['heading', { words: 'Heading', limit: proofLimits.headingApart, unit: '°' }],
  ['depth', { words: 'Depth, after the offsets,', limit: proofLimits.depthApart, unit: ' m' }],
  ['position', { words: 'Position', limit: proofLimits.positionApart, unit: ' m' }],
  ['wind-angle', { words: 'Apparent wind angle', limit: proofLimits.windAngleApart, unit: '°' }],
  ['wind-speed', { words: 'Apparent wind speed', limit: proofLimits.windSpeedApart, unit: ' kn' }],
]);

const inUnit = (value: number, unit: string): string =>
  unit === ' m' ? lengthWords(value) : `${figure(value)}${unit}`;

/** Two sources of one reading that differ by more than they should. */
export const readingsDisagree: Check = {
  id: 'readings-disagree',
  title: 'Two sources of one reading do not agree.',
  level: 'doubt',
  sources: ['choice-proof'],
  find: (seen) =>
    valuesOf(seen).flatMap((values) =>
      values.book.pairs().flatMap((pair) => {
        const { a, b, differences } = pair;
        const kind = compared.get(a.kind);
        const apart = differences.median();
        if (kind === undefined || apart === undefined || differences.count() < proofLimits.comparisons.value) return [];
        if (Math.abs(apart) <= kind.limit.value || isMarkedWrongly(pair)) return [];
        const [first, second] = [sourceWords(seen, values, a), sourceWords(seen, values, b)];
        return [
          {
            about: aboutSources(values, [a, b]),
            apart: `${a.kind}:${sourceKey(a)}:${sourceKey(b)}`,
            says: `${kind.words} of ${first} and of ${second} differ by ${inUnit(Math.abs(apart), kind.unit)}; the limit is ${inUnit(kind.limit.value, kind.unit)}.`,
            device: second,
            message: b.message,
            ...atTime(b.lastUs),
            ...bytesOf(b.message, b.bytes),
            cure: 'Find out which is right by a bearing, a lead or a chart, correct the other, and choose the main source on every screen.',
          },
        ];
      }),
    ),
};
