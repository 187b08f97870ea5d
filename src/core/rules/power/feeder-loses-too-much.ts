import { feederDrop } from '../../facts/drop-limits.ts';
import { within } from '../../power/within.ts';
import type { Rule } from '../rule.ts';
import { figurePart } from '../rule-words.ts';
import { percent, volts } from './feed-words.ts';

/** What the feeder of a panel loses is missing at everything that hangs on it, upon what each feed loses. */
export const feederLosesTooMuch: Rule = {
  id: 'power/feeder-loses-too-much',
  level: 'doubt',
  title: 'Too much is lost on the way to a panel.',
  sources: ['abyc-e11', 'choice-summed-drop'],
  check: ({ index, plan }) =>
    plan.supplies.flatMap(({ source, sourceV, at }) =>
      at.flatMap(({ node, volts: panelV }) => {
        if (!index.panels.has(node)) return [];
        const nominalV = plan.feeds.find(({ panel }) => panel === node)?.nominalV;
        if (nominalV === undefined) return [];
        const lostPct = (100 * (sourceV - panelV)) / nominalV;
        if (within({ value: lostPct, limit: feederDrop.value })) return [];
        return [
          {
            about: [node],
            says: `${percent(lostPct)} are lost between ${source} and ${node} with everything drawing: it has ${volts(panelV)} of ${volts(sourceV)}. All that hangs on it goes without.`,
            measured: { value: lostPct, unit: '%' },
            limit: figurePart(feederDrop),
            cure: 'Lay a thicker feeder, or feed the heavy units from the battery’s own panel.',
          },
        ];
      }),
    ),
};
