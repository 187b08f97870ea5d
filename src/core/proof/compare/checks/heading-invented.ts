import type { Check } from '../check.ts';
import { inventsHeading } from '../invents-heading.ts';
import { atTime, bytesOf, figure } from '../say.ts';
import { aboutSources, sourceKey, sourceWords, unitOfSource, valuesOf } from '../value-words.ts';

/** A converter, or a log, that sends a heading although nothing gives it one. */
export const headingInvented: Check = {
  id: 'heading-invented',
  title: 'A unit without a compass sends a heading.',
  level: 'fault',
  sources: ['practice-log-headings'],
  find: (seen) =>
    valuesOf(seen).flatMap((values) =>
      values.book.sources().flatMap((source) => {
        const unit = unitOfSource(values, source);
        if (source.kind !== 'heading' || unit === undefined || !inventsHeading(seen.planned, unit)) return [];
        return [
          {
            about: [unit, ...aboutSources(values, [source])],
            apart: sourceKey(source),
            says: `${sourceWords(seen, values, source)} sends a heading of ${figure(source.last.value)}°, and nothing it has or is joined to knows one.`,
            device: sourceWords(seen, values, source),
            message: source.message,
            ...atTime(source.lastUs),
            ...bytesOf(source.message, source.bytes),
            cure: 'Switch off the heading it sends, or the sentence it makes it from (VHW of a log carries none that is true).',
          },
        ];
      }),
    ),
};
