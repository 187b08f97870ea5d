import type { MmShape } from '../../core/fits-shape.ts';
import { pathShape } from '../drawing/marks.ts';
import { polyline } from '../drawing/polyline.ts';
import type { Drawing, Shape, Stroke } from '../drawing/shapes.ts';
import { type OnDrawing, outlinePath } from './outline-path.ts';
import type { Template } from './template.ts';
import { templateExtent } from './template-extent.ts';
import { templateLabelStyle, templateLabels } from './template-labels.ts';

/** White round a template, so that no line lies on the edge of its paper. */
const roundMm = 6;

const strokes = {
  cut: { ink: 'ink', widthMm: 0.3 },
  mark: { ink: 'quiet', widthMm: 0.2, dashMm: [3, 1.5] },
  axis: { ink: 'quiet', widthMm: 0.13, dashMm: [6, 1.5, 1, 1.5] },
  drill: { ink: 'ink', widthMm: 0.2 },
} as const satisfies Record<string, Stroke>;

/** A line across and one up through the middle of what is cut. */
const axes = ({ xMm, yMm, widthMm, heightMm }: MmShape, on: OnDrawing): Shape =>
  pathShape(
    [
      ...polyline([on(xMm - widthMm / 2, yMm), on(xMm + widthMm / 2, yMm)]),
      ...polyline([on(xMm, yMm + heightMm / 2), on(xMm, yMm - heightMm / 2)]),
    ],
    { stroke: strokes.axis },
  );

const drilled = ({ xMm, yMm, holeMm }: Template['drill'][number], on: OnDrawing): Shape[] => {
  const reach = holeMm / 2 + 2;
  const round: MmShape = { shape: 'round', xMm, yMm, widthMm: holeMm, heightMm: holeMm };
  return [
    pathShape(outlinePath(round, on), { stroke: strokes.drill }),
    pathShape(
      [
        ...polyline([on(xMm - reach, yMm), on(xMm + reach, yMm)]),
        ...polyline([on(xMm, yMm + reach), on(xMm, yMm - reach)]),
      ],
      { stroke: { ...strokes.drill, widthMm: 0.13 } },
    ),
  ];
};

/** How the millimetres of a template come to lie on its drawing. */
export const onTemplate = (template: Template): OnDrawing => {
  const { leftMm, aboveMm } = templateExtent(template);
  return (xMm, yMm) => [xMm - leftMm + roundMm, aboveMm - yMm + roundMm];
};

/** A template in its true size: what is cut in full lines, what is marked in dashes, what is drilled with a cross. */
export const templateDrawing = (template: Template): Drawing => {
  const { leftMm, rightMm, aboveMm, belowMm } = templateExtent(template);
  const on = onTemplate(template);
  const { cut, mark, drill } = template;
  return {
    title: template.title,
    widthMm: rightMm - leftMm + 2 * roundMm,
    heightMm: aboveMm - belowMm + 2 * roundMm,
    shapes: [
      ...mark.map(({ shape }) => pathShape(outlinePath(shape, on), { stroke: strokes.mark })),
      ...cut.slice(cut.length > 1 ? 1 : 0).map(({ shape }) => axes(shape, on)),
      ...cut.map(({ shape }) => pathShape(outlinePath(shape, on), { stroke: strokes.cut })),
      ...drill.flatMap((one) => drilled(one, on)),
      ...templateLabels(template).map(({ xMm, yMm, says }): Shape => {
        const [leftAtMm, baseMm] = on(xMm, yMm);
        return { kind: 'text', xMm: leftAtMm, yMm: baseMm, text: says, ...templateLabelStyle, ink: 'quiet' };
      }),
    ],
  };
};
