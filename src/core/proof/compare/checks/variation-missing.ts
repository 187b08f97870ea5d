import type { Check } from '../check.ts';
import { sourceWords, unitOfSource, valuesOf } from '../value-words.ts';

/** Magnetic headings, and nobody who tells the variation. */
export const variationMissing: Check = {
  id: 'variation-missing',
  title: 'Magnetic heading is sent, and nobody tells the variation.',
  level: 'doubt',
  sources: ['pgn-database'],
  find: (seen) =>
    valuesOf(seen).flatMap((values) => {
      const sources = values.book.sources();
      const magnetic = sources.filter(({ kind, last }) => kind === 'heading' && last.reference === 'magnetic');
      const [first] = magnetic;
      // A line alone may have its variation elsewhere.
      if (first === undefined || values.bus === undefined || sources.some(({ kind }) => kind === 'variation'))
        return [];
      return [
        {
          about: [values.bus.id, ...magnetic.flatMap((source) => unitOfSource(values, source) ?? [])],
          says: `The heading of ${sourceWords(seen, values, first)} is magnetic, and no variation (127258) was heard: screens cannot show it true.`,
          device: sourceWords(seen, values, first),
          message: 127_258,
          cure: 'Switch variation on in the position sensor or a plotter.',
        },
      ];
    }),
};
