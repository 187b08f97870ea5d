import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { printLength } from '../../core/units/print-length.ts';
import { cardBoat } from '../cards/card-boat.ts';
import type { ListTable } from '../table/list-table.ts';
import { feedRows } from './feed-rows.ts';
import { labelOf } from './label-of.ts';

const columns: ListTable['columns'] = [
  { id: 'feeds', head: 'feeds', share: 2.4 },
  { id: 'label', head: 'label', kind: 'label' },
  { id: 'panel', head: 'panel', share: 1.4 },
  { id: 'circuit', head: 'circuit', kind: 'label', share: 1.3 },
  { id: 'typical', head: 'typical', unit: 'A', kind: 'figure', printed: false },
  { id: 'draws', head: 'draws', unit: 'A', kind: 'figure' },
  { id: 'peak', head: 'for moments', unit: 'A', kind: 'figure' },
  { id: 'length', head: 'length', unit: 'm', kind: 'figure', digits: 2 },
  { id: 'length-ft', head: 'length ft', printed: false },
  { id: 'wire', head: 'wire', unit: 'mm2', kind: 'figure' },
  { id: 'awg', head: 'wire AWG' },
  { id: 'decided', head: 'decided by', printed: false },
  { id: 'drop-asks', head: 'drop asks', unit: 'mm2', printed: false },
  { id: 'current-asks', head: 'current asks', unit: 'mm2', printed: false },
  { id: 'least', head: 'least', unit: 'mm2', printed: false },
  { id: 'allowed', head: 'may lose', unit: 'V', kind: 'figure', digits: 2 },
  { id: 'rule-drop', head: 'lost by rule', unit: 'V', kind: 'figure', digits: 2 },
  { id: 'rule-pct', head: 'lost by rule', unit: '%', kind: 'figure', digits: 1, printed: false },
  { id: 'real-drop', head: 'lost in cable', unit: 'V', kind: 'figure', digits: 2, printed: false },
  { id: 'real-pct', head: 'lost in cable', unit: '%', kind: 'figure', digits: 1, printed: false },
  { id: 'carries', head: 'wire carries', unit: 'A', kind: 'figure' },
  { id: 'fuse', head: 'fuse', unit: 'A', kind: 'figure' },
  { id: 'fuse-is', head: 'fuse is', share: 1.4 },
  { id: 'at-end', head: 'at its end', unit: 'V', kind: 'figure', digits: 2 },
  { id: 'needs', head: 'needs', unit: 'V', kind: 'figure' },
  { id: 'lost', head: 'lost from bank', unit: '%', kind: 'figure', digits: 1, printed: false },
  { id: 'why', head: 'why', printed: false },
  { id: 'line', head: 'line id', kind: 'label', printed: false },
];

/** The feeds, a row a feed in the order of the panels, then a row for each thing that has none. */
export const feedList = (boat: Boat, plan: Plan): ListTable => {
  const { fed, unfed } = feedRows(cardBoat(boat), plan);
  const labels = new Map(plan.lines.map((line) => [line.id, labelOf(line)]));
  return {
    id: 'feeds',
    title: 'Feeds',
    says: 'What feeds what, over which wire, behind which fuse. Lengths are at their longest, one way.',
    columns,
    rows: [
      // what no circuit names stands among the unfed
      ...fed.flatMap(({ what, panel, circuit, fuse, why, key, feed }) =>
        feed === undefined
          ? []
          : [
              [
                what,
                labels.get(feed.line),
                panel,
                circuit,
                feed.typicalA,
                feed.loadA,
                feed.peakA,
                feed.lengthM,
                printLength({ valueM: feed.lengthM, as: 'feet' }),
                feed.areaMm2,
                feed.awg,
                feed.decidedBy ?? feed.wire,
                feed.asked?.drop,
                feed.asked?.ampacity,
                feed.asked?.least,
                feed.allowedV,
                feed.dropV,
                feed.dropPct,
                feed.realDropV,
                feed.realDropPct,
                feed.ampacityA,
                feed.fuseA,
                fuse,
                feed.atEndV,
                feed.leastV,
                feed.lostPct,
                why.join(' '),
                key,
              ],
            ],
      ),
      ...unfed.map(({ what, fact, key }) => [what, ...columns.slice(1, -2).map(() => undefined), fact, key]),
    ],
    empty: 'Nothing is fed yet.',
  };
};
