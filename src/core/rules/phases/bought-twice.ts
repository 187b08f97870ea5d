import { byCodeUnit } from '../../boat/ids.ts';
import { typicalPrices } from '../../facts/prices.ts';
import type { PhaseItem, PhasesPart } from '../../phases-shape.ts';
import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

const worth = ({ count, each = 0 }: PhaseItem): number => count * each;

/** What is bought beyond the work done at once, dearest first. */
const dearest = ({ costs }: PhasesPart): PhaseItem[] =>
  costs.more.filter(({ count }) => count > 0).sort((a, b) => worth(b) - worth(a) || byCodeUnit(a.id, b.id));

/** Money that the phases cost: an earlier one buys what a later one throws away. */
export const boughtTwice: Rule = {
  id: 'phases/bought-twice',
  level: 'advice',
  title: 'A phase buys what a later one throws away.',
  sources: ['choice-phases'],
  looksAt: 'whole-plan',
  check: ({ index, plan: { phases } }) => {
    if (phases === undefined || phases.costs.cost <= 0) return [];
    const { costs, between } = phases;
    const [first, ...others] = dearest(phases);
    if (first === undefined) return [];
    const currency = index.boat.prices?.currency ?? typicalPrices.currency;
    const sum = `${(costs.cost / 100).toFixed(2)} ${currency}`;
    const units = between.map((unit) => unitName(index, unit));
    const what =
      units.length > 0
        ? `Bought for the time between: ${units.join(' and ')}; in the end no reading that is needed passes ${units.length === 1 ? 'it' : 'them'}.`
        : `The dearest is ${first.item}${others.length === 0 ? '' : `, with ${others.length} more`}.`;
    const cures = costs.cures.map(({ saves, ...cure }) => ({ ...cure, cost: -saves }));
    return [
      {
        about: between.length > 0 ? between : [first.id],
        says: `The phases of the refit buy for ${sum} more than the work done at once would. ${what}`,
        measured: { value: costs.cost / 100, unit: currency },
        cure:
          cures[0]?.says ??
          'Look at what each phase buys, in phases.txt: buy the longer piece or the larger wire now, or bring a unit forward.',
        ...(cures.length === 0 ? {} : { cures }),
      },
    ];
  },
};
