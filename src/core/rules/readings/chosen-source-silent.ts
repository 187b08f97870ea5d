import { readingName } from '../../facts/reading-words.ts';
import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

/** A source somebody chose that brings the reading to no screen it was chosen for: taken out, not wired, or not sending it. */
export const chosenSourceSilent: Rule = {
  id: 'readings/chosen-source-silent',
  level: 'doubt',
  title: 'The source that was chosen does not bring the reading.',
  sources: ['project-readings'],
  looksAt: 'whole-plan',
  check: ({ index, plan }) =>
    (index.boat.sources ?? []).flatMap(({ reading, instance, at, primary }) => {
      const isHeard = plan.sources.some(
        (entry) =>
          entry.reading === reading &&
          entry.instance === instance &&
          (at === undefined || entry.at === at) &&
          entry.primary.from === primary,
      );
      if (isHeard) return [];
      const where = at === undefined ? 'no screen' : unitName(index, at);
      const does = at === undefined ? 'it brings it to no screen' : `it does not reach ${where}`;
      return [
        {
          about: [primary, ...(at === undefined ? [] : [at])],
          apart: [reading, ...(instance === undefined ? [] : [instance])],
          says: `${unitName(index, primary)} was chosen to give ${readingName({ reading, instance })}${at === undefined ? '' : ` at ${where}`}, but ${does}. The plan takes another where there is one.`,
          cure: 'Choose another source, or see why this one does not arrive.',
        },
      ];
    }),
};
