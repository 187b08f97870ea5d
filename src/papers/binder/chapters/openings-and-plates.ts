import type { Boat } from '../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../core/plan-shape.ts';
import { panelCautions } from '../../power/caution-words.ts';
import type { ListTable } from '../../table/list-table.ts';
import { dimensionedDrawing } from '../../templates/dimensioned-drawing.ts';
import { stackedDrawings } from '../../templates/stacked-drawings.ts';
import type { Template } from '../../templates/template.ts';
import { templatesOf } from '../../templates/templates-of.ts';
import type { Block, Chapter } from '../binder-shape.ts';

/** What of the old hole would show, as it lies on the drawing of its plate. */
const bareIn = ({ fits, plates }: Plan, { id }: Template) => {
  const plate = plates.find((one) => one.id === id);
  const under = plate?.openings ?? [{ opening: id, xMm: 0, yMm: 0 }];
  return under.flatMap(({ opening, xMm, yMm }) =>
    (fits.find((fit) => fit.opening === opening)?.uncovered?.slivers ?? []).map((points) =>
      points.map(([x, y]) => [x + xMm, y + yMm] as const),
    ),
  );
};

const drawingsOf = (boat: Boat, plan: Plan): Block[] => {
  const drawn = templatesOf(boat, plan).map((template) => ({
    title: template.title,
    about: template.about,
    drawing: dimensionedDrawing(template, bareIn(plan, template)),
  }));
  return stackedDrawings(drawn).flatMap(({ about, drawing }, at): Block[] => [
    ...(at === 0 ? [{ kind: 'heading' as const, text: 'Plates and cut-outs' }] : []),
    { kind: 'drawing', drawing, about, isUpright: true },
  ]);
};

/** Old holes, what becomes of them, and every plate and cut-out with its dimensions; none where no opening is entered. */
export const openingChapters = (boat: Boat, plan: Plan, lists: readonly ListTable[]): Chapter[] => {
  if (plan.fits.length === 0) return [];
  return [
    {
      id: 'openings-and-plates',
      title: 'Openings and plates',
      blocks: [
        {
          kind: 'words',
          text: 'What is drawn here is an overview. To cut by there are templates in true size, as PDF on sheets to be laid together, as SVG and as DXF: print at 100 %, measure the rulers on every sheet, hold the template against the unit in its box, and only then cut.',
        },
        ...panelCautions().map(({ title, says, decides }) => ({
          kind: 'caution' as const,
          hazard: title,
          text: says,
          ...(decides === undefined ? {} : { deferTo: decides }),
        })),
        ...lists.filter(({ rows }) => rows.length > 0).map((table): Block => ({ kind: 'table', table })),
        ...drawingsOf(boat, plan),
      ],
    },
  ];
};
