import { shipPapers } from '../../facts/ship-papers.ts';
import type { Rule } from '../rule.ts';

/** A set comes that cannot be set up before its papers are there, and they were not asked for. */
export const papersNotStarted: Rule = {
  id: 'settings/papers-not-started',
  level: 'doubt',
  title: 'Papers are not started before the order.',
  sources: ['practice-papers-first', 'memory-paper-waits'],
  looksAt: 'whole-plan',
  check: ({ index, plan }) => {
    const open = plan.shipPapers.flatMap((entry) => {
      const coming = entry.for.filter((unit) => index.kit.get(unit)?.fate === 'comes');
      return entry.state === 'to-start' && coming.length > 0 ? [{ ...entry, coming }] : [];
    });
    if (open.length === 0) return [];
    const words = open.map(
      ({ paper, waitDays, waitFrom }) =>
        `${shipPapers[paper].name} (${waitFrom === 'office' ? '' : 'some '}${waitDays} days${waitFrom === 'office' ? '' : ', from memory'})`,
    );
    return [
      {
        about: [...new Set(open.flatMap(({ coming }) => coming))],
        says: `Not asked for yet: ${words.join(', ')}. What comes cannot be set up without.`,
        cure: 'Start them before you order, ask each office how long it takes, and note it at the step Fit.',
      },
    ];
  },
};
