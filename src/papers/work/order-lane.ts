import type { PhaseWork } from '../../core/work-shape.ts';
import { pathShape } from '../drawing/marks.ts';
import { polygon } from '../drawing/polyline.ts';
import type { Shape } from '../drawing/shapes.ts';
import { dayOfPhase } from './day-words.ts';
import type { DrawnWork } from './picture-input.ts';
import { itemName } from './work-names.ts';
import { workSizes } from './work-sizes.ts';

const { smallMm, laneMm } = workSizes;
const markMm = 1.1;

interface OrderDay {
  readonly phase: PhaseWork;
  readonly day: number;
  readonly items: readonly string[];
}

/** Things by the last day to order them; what was to be ordered before the first day stands on that. */
const orderDays = ({ phases, axis }: DrawnWork): OrderDay[] =>
  phases.flatMap((phase) => {
    const byDay = new Map<number, string[]>();
    for (const { day, item } of phase.orderBy) {
      const shown = Math.max(0, day);
      if (axis.holds(phase.phase, shown, shown)) byDay.set(shown, [...(byDay.get(shown) ?? []), item]);
    }
    return [...byDay].map(([day, items]) => ({ phase, day, items }));
  });

/** The days by which something is to be ordered, each with how many things; absent where nothing that is ordered holds the work up. */
export const orderLane = (work: DrawnWork): readonly Shape[] | undefined => {
  if (work.phases.every(({ orderBy }) => orderBy.length === 0)) return undefined;
  const yMm = laneMm / 2;
  return orderDays(work).map(({ phase, day, items }): Shape => {
    const xMm = work.axis.xOf({ phase: phase.phase, day, slot: 0 }) + markMm + 0.4;
    const isLate = phase.orderBy.some((one) => one.day < 0 && items.includes(one.item));
    const when = `${isLate ? 'before' : 'by'} ${dayOfPhase(phase, day)}`;
    return {
      kind: 'group',
      about: items,
      label: `to order ${when}: ${items.map((item) => itemName(work.names, item)).join(', ')}`,
      shapes: [
        pathShape(
          polygon([
            [xMm - markMm, yMm - markMm],
            [xMm + markMm, yMm - markMm],
            [xMm, yMm + markMm],
          ]),
          isLate ? { fill: 'accent' } : { stroke: { ink: 'ink', widthMm: 0.25 } },
        ),
        {
          kind: 'text',
          text: String(items.length),
          xMm: xMm + markMm + 0.8,
          yMm: yMm + 1,
          sizeMm: smallMm,
          face: 'words',
          ink: isLate ? 'accent' : 'ink',
        },
      ],
    };
  });
};
