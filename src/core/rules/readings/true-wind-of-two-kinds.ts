import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

/** True wind by the water at one screen and by the ground at another: in a stream they differ by the stream. */
export const trueWindOfTwoKinds: Rule = {
  id: 'readings/true-wind-of-two-kinds',
  level: 'doubt',
  title: 'Two screens show true wind of two kinds.',
  sources: ['practice-derived-readings'],
  looksAt: 'whole-plan',
  check: ({ index, plan }) => {
    const winds = plan.sources.filter(({ reading }) => reading === 'wind-true');
    const by = (reference: 'water' | 'ground') => winds.filter(({ primary }) => primary.reference === reference);
    const [water, ground] = [by('water'), by('ground')];
    const names = (entries: typeof winds): string =>
      [...new Set(entries.map(({ at }) => unitName(index, at)))].join(' and ');
    if (water.length === 0 || ground.length === 0) return [];
    return [
      {
        about: [...new Set([...water, ...ground].map(({ at }) => at))],
        says: `True wind is reckoned with speed through the water for ${names(water)}, and with speed over ground for ${names(ground)}. In a stream of 2 kn the two differ by up to 2 kn.`,
        cure: 'Take true wind from one unit for all screens, or bring speed through the water to each that reckons it.',
      },
    ];
  },
};
