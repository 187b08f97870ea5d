import { hullPattern } from '../../../core/facts/hull-patterns.ts';
import { pathShape } from '../../drawing/marks.ts';
import { polyline, rectangle } from '../../drawing/polyline.ts';
import type { Shape } from '../../drawing/shapes.ts';
import { hullOnView } from '../../sheet/hull-on-view.ts';
import type { KnownBoat } from '../known-boat.ts';
import { sheetText } from '../sheet-text.ts';
import { type WindowSpan, windowView } from './window-view.ts';

/** Room of the key plan at the foot of a sheet. */
export const keyPlanMm = { widthMm: 62, heightMm: 17 } as const;

/** The whole boat very small, with the windows numbered by their sheets and this one marked by a thick frame. */
export const keyPlan = (
  { boat }: Pick<KnownBoat, 'boat'>,
  { spans, at, sheets }: { spans: readonly WindowSpan[]; at: number; sheets: readonly number[] },
  { leftMm, topMm }: { leftMm: number; topMm: number },
): Shape => {
  const [first] = spans;
  if (first === undefined) return { kind: 'group', shapes: [] };
  const { reach } = first;
  const spanM = reach.toM - reach.fromM;
  const mmPerM = Math.min(
    (keyPlanMm.widthMm - 2) / spanM,
    (keyPlanMm.heightMm - 6) / (reach.belowM + Math.min(reach.aboveM, reach.breakM)),
  );
  const box = {
    leftMm,
    rightMm: leftMm + keyPlanMm.widthMm,
    topMm: topMm + 4.4,
    bottomMm: topMm + keyPlanMm.heightMm,
  };
  const whole = {
    reach: { ...reach, aboveM: Math.min(reach.aboveM, reach.breakM) },
    fromM: reach.fromM,
    toM: reach.toM,
    at: 0,
    of: 1,
  };
  const view = windowView(whole, box, mmPerM);
  const parts = hullPattern(boat.hull)[reach.view].filter(({ role }) => role === 'hull' || role === 'house');
  const windows = spans.flatMap((span, order): Shape[] => {
    const [fromMm] = view.point(span.fromM, 0);
    const [toMm] = view.point(span.toM, 0);
    const isHere = order === at;
    const frame = rectangle({
      leftMm: fromMm,
      topMm: topMm + 4.2,
      widthMm: toMm - fromMm,
      heightMm: keyPlanMm.heightMm - 4.2,
    });
    return [
      ...(isHere
        ? [pathShape(frame, { stroke: { ink: 'ink', widthMm: 0.7 } })]
        : [
            pathShape(
              polyline([
                [toMm, topMm + 4.2],
                [toMm, topMm + keyPlanMm.heightMm],
              ]),
              { stroke: { ink: 'ink', widthMm: 0.2 } },
            ),
          ]),
      {
        kind: 'text',
        xMm: (fromMm + toMm) / 2,
        yMm: topMm + 3,
        text: isHere ? `this: ${sheets[order] ?? ''}` : `sheet ${sheets[order] ?? ''}`,
        ...(isHere ? { ...sheetText.small, weight: 'semibold' as const } : sheetText.small),
        anchor: 'middle',
        ink: 'ink',
      },
    ];
  });
  return { kind: 'group', label: 'key plan', shapes: [...hullOnView(view, parts), ...windows] };
};
