import type { BoatIndex } from '../../boat/boat-index.ts';
import { feedsOfOne } from '../../facts/supply-figures.ts';
import type { LaidPlan } from '../../plan-shape.ts';
import type { Rule } from '../rule.ts';
import { figurePart } from '../rule-words.ts';
import { fedName, someNames, unitOf } from './supply-words.ts';

interface Feed {
  readonly target: string;
  readonly by: string;
  readonly banks: readonly string[];
}

/** Every feed of a unit, panel or converter; a bus has a rule of its own. */
const feedsOf = (index: BoatIndex, { panels }: LaidPlan): Feed[] =>
  panels.flatMap(({ circuits, banks }) =>
    circuits.flatMap(({ circuit, feeds }) =>
      feeds.filter((target) => !index.buses.has(target)).map((target) => ({ target, by: circuit, banks })),
    ),
  );

/** A panel that hangs on one thing while a circuit of another feeds it too. */
const hungElsewhere = ({ panels }: LaidPlan): Feed[] =>
  panels.flatMap(({ panel, from, banks }) => {
    const feeding = panels.filter(({ circuits }) => circuits.some(({ feeds }) => feeds.includes(panel)));
    return feeding.length > 0 && feeding.every((entry) => entry.panel !== from)
      ? [{ target: panel, by: from, banks }]
      : [];
  });

/** What is fed twice stays live with one breaker off, and joins two banks through a thin wire. */
export const fedTwice: Rule = {
  id: 'supply/fed-twice',
  level: 'fault',
  title: 'Two circuits feed one unit, panel or converter.',
  sources: ['practice-separate-feeds'],
  check: ({ index, plan }) => {
    const feeds = [...feedsOf(index, plan), ...hungElsewhere(plan)];
    return [...new Set(feeds.map(({ target }) => target))].flatMap((target) => {
      const own = feeds.filter((feed) => feed.target === target);
      if (own.length < 2) return [];
      const banks = [...new Set(own.flatMap((feed) => feed.banks))];
      const by = own.map((feed) => feed.by);
      return [
        {
          about: [unitOf(target), ...by],
          ...(target.includes('.') ? { apart: [target] } : {}),
          says: `${fedName(index, target)} is fed by ${someNames(by)}. With one of them off it is still live${banks.length > 1 ? `, and ${someNames(banks)} are joined through its wires` : ', and neither protects its wire'}.`,
          measured: { value: own.length, unit: 'feeds' },
          limit: figurePart(feedsOfOne),
          cure: 'Keep one feed. Before you work there, see with a meter that it is dead.',
        },
      ];
    });
  },
};
