import type { Boat } from '../../core/boat/boat-schema.ts';
import { pathShape } from '../drawing/marks.ts';
import { polyline } from '../drawing/polyline.ts';
import type { Shape } from '../drawing/shapes.ts';
import { textWidthMm } from '../drawing/text-width.ts';
import type { SheetFrame } from './sheet-frame.ts';

const style = { sizeMm: 2.95, face: 'figures' } as const;
const baselineMm = 5.6;

/** Least room between two figures of the scale. */
const leastStepMm = 9;

const stepM = (mmPerM: number): number => [1, 2, 5, 10, 20].find((step) => step * mmPerM >= leastStepMm) ?? 50;

/** The scale along the boat in metres from the transom, with hair lines down to `bottomMm`. */
export const axis = ({ boat, frame, bottomMm }: { boat: Boat; frame: SheetFrame; bottomMm: number }): Shape => {
  const step = stepM(frame.mmPerM);
  const marks = Array.from({ length: Math.floor(boat.hull.lengthM / step) + 1 }, (_, index) => index * step);
  const xMm = (metres: number): number => frame.zeroMm + metres * frame.mmPerM;
  const hair = marks.map((metres) =>
    pathShape(
      polyline([
        [xMm(metres), baselineMm + 1.6],
        [xMm(metres), bottomMm],
      ]),
      { stroke: { ink: 'rule', widthMm: 0.2 } },
    ),
  );
  const figures = marks.map(
    (metres): Shape => ({
      kind: 'text',
      xMm: xMm(metres),
      yMm: baselineMm,
      text: String(metres),
      ...style,
      anchor: 'middle',
      ink: 'quiet',
    }),
  );
  const last = marks.at(-1) ?? 0;
  const unit: Shape = {
    kind: 'text',
    xMm: xMm(last) + textWidthMm(String(last), style) / 2 + 1.4,
    yMm: baselineMm,
    text: 'm',
    ...style,
    ink: 'quiet',
  };
  return { kind: 'group', label: 'metres from the transom', shapes: [...hair, ...figures, unit] };
};
