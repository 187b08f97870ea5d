import type { Boat } from '../../core/boat/boat-schema.ts';
import { pathShape } from '../drawing/marks.ts';
import { polyline } from '../drawing/polyline.ts';
import type { Shape } from '../drawing/shapes.ts';
import { textWidthMm } from '../drawing/text-width.ts';
import type { SheetFrame } from './sheet-frame.ts';
import type { SheetUnits } from './sheet-units.ts';

const style = { sizeMm: 2.95, face: 'figures' } as const;
const baselineMm = 5.6;

/** Least room between two figures of the scale. */
const leastStepMm = 9;

const stepOf = (mmPerUnit: number): number =>
  [1, 2, 5, 10, 20, 50].find((step) => step * mmPerUnit >= leastStepMm) ?? 100;

/** The scale along the boat in metres or feet from the transom, with hair lines down to `bottomMm`. */
export const axis = ({
  boat,
  frame,
  units,
  bottomMm,
}: {
  boat: Boat;
  frame: Pick<SheetFrame, 'mmPerM' | 'zeroMm'>;
  units: SheetUnits;
  bottomMm: number;
}): Shape => {
  const mmPerUnit = frame.mmPerM * units.inM;
  const step = stepOf(mmPerUnit);
  const marks = Array.from(
    { length: Math.floor(boat.hull.lengthM / units.inM / step) + 1 },
    (_, index) => index * step,
  );
  const xMm = (along: number): number => frame.zeroMm + along * mmPerUnit;
  const hair = marks.map((along) =>
    pathShape(
      polyline([
        [xMm(along), baselineMm + 1.6],
        [xMm(along), bottomMm],
      ]),
      { stroke: { ink: 'rule', widthMm: 0.2 } },
    ),
  );
  const figures = marks.map(
    (along): Shape => ({
      kind: 'text',
      xMm: xMm(along),
      yMm: baselineMm,
      text: String(along),
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
    text: units.word,
    ...style,
    ink: 'quiet',
  };
  return {
    kind: 'group',
    label: `${units.word === 'm' ? 'metres' : 'feet'} from the transom`,
    shapes: [...hair, ...figures, unit],
  };
};
