import type { Boat } from '../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../core/plan-shape.ts';
import type { Drawing } from '../../drawing/shapes.ts';
import { energyChart } from '../../energy/energy-chart.ts';
import { lineDiagram } from '../../lanes/line-diagram.ts';
import { oneLine } from '../../power/one-line.ts';
import { boatSheet } from '../../sheet/boat-sheet.ts';
import type { Block, Chapter } from '../binder-shape.ts';

/** The room of a page that is turned, for drawings that lay themselves out for a size. */
const sheetMm = { widthMm: 255, heightMm: 155 } as const;

const drawn = (text: string, drawing: Drawing): Block[] => [
  { kind: 'heading', text },
  { kind: 'drawing', drawing },
];

/** Every drawing, each with a heading of its own. */
export const drawingsChapter = (boat: Boat, plan: Plan): Chapter => ({
  id: 'drawings',
  title: 'Drawings',
  blocks: [
    ...drawn('The boat with her lines', boatSheet({ boat, plan, ...sheetMm }).drawing),
    ...drawn('Lines of data', lineDiagram({ boat, plan, widthMm: sheetMm.widthMm })),
    ...oneLine({ boat, plan, ...sheetMm }).flatMap((page, at, all) =>
      drawn(all.length === 1 ? 'Power on one line' : `Power on one line, ${at + 1} of ${all.length}`, page),
    ),
    ...drawn('The energy of a day', energyChart({ boat, plan, widthMm: 175, heading: '' })),
  ],
});
