import { fuseMargin } from '../../facts/fuses.ts';
import { within } from '../../power/within.ts';
import type { Rule } from '../rule.ts';
import { sourceWords } from '../rule-words.ts';
import { circuitSums } from './circuit-sums.ts';
import { amps, circuitName, fedName } from './feed-words.ts';

/** A fuse that carries its full rating for long ages and opens on a warm night; below the current it opens at once. */
export const fuseUnderLoad: Rule = {
  id: 'power/fuse-under-load',
  level: 'fault',
  title: 'A fuse or breaker is smaller than what hangs on it draws.',
  sources: ['practice-fuse-size'],
  check: ({ index, plan }) =>
    circuitSums(plan.feeds).flatMap((sum) => {
      const { ratingA, loadA, feeds } = sum;
      if (within({ value: loadA, limit: ratingA })) return [];
      const hangs = [...new Set(feeds.map(({ to }) => fedName(index, to)))].join(', ');
      const neededA = loadA * fuseMargin.value;
      return [
        {
          about: [sum.circuit, ...feeds.map(({ to }) => to)],
          says: `${circuitName(index, sum)} is ${amps(ratingA)}; at the lowest volts ${amps(loadA)} hang on it: ${hangs}.`,
          measured: { value: loadA, unit: 'A' },
          limit: { value: ratingA, unit: 'A', source: sourceWords(fuseMargin.source) },
          cure: `Fit ${amps(neededA)} or the next rating above, with a wire that carries it; or take something off this circuit.`,
        },
      ];
    }),
};
