import type { Boat } from '../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../core/plan-shape.ts';
import { energyChart } from '../../energy/energy-chart.ts';
import type { BinderDrawing, BinderRequest } from '../../framed/binder-drawings.ts';
import type { Block, Chapter } from '../binder-shape.ts';

/** The chart of a day's energy, as wide as the words on a page. */
const chartMm = 175;

const sentenceCase = (title: string): string => `${title[0]?.toUpperCase() ?? ''}${title.slice(1)}`;

const energyBlocks = (boat: Boat, plan: Plan): Block[] =>
  plan.energy.length === 0
    ? []
    : [
        { kind: 'heading', text: 'The energy of a day' },
        { kind: 'drawing', drawing: energyChart({ boat, plan, widthMm: chartMm, heading: '' }) },
      ];

/** Every drawing: framed sheets, each a page of its own named in the contents, then the chart of a day's energy. */
export const drawingsChapter = (
  { boat, plan }: Pick<BinderRequest, 'boat' | 'plan'>,
  drawings: readonly BinderDrawing[],
): Chapter => ({
  id: 'drawings',
  title: 'Drawings',
  blocks: [
    ...drawings.flatMap(({ title, about, drawing }): Block[] => [
      { kind: 'heading', text: sentenceCase(title) },
      { kind: 'drawing', drawing, ...(about.length === 0 ? {} : { about }) },
    ]),
    ...energyBlocks(boat, plan),
  ],
});
