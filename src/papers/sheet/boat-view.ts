import type { Place } from '../../core/boat/boat-schema.ts';
import type { HullPart } from '../../core/facts/hull-patterns.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { textBox, textsOf } from '../drawing/box.ts';
import { flattenPath } from '../drawing/flatten-path.ts';
import { pathShape } from '../drawing/marks.ts';
import { polyline } from '../drawing/polyline.ts';
import type { Shape } from '../drawing/shapes.ts';
import { balloonsOnView } from './balloons-on-view.ts';
import { breakLine } from './break-line.ts';
import type { DrawnBoat } from './drawn-boat.ts';
import { hullOnView } from './hull-on-view.ts';
import type { SoftLine } from './label-room.ts';
import { linesOnView } from './lines-on-view.ts';
import { placeMarks } from './place-marks.ts';
import type { SheetFrame } from './sheet-frame.ts';
import type { Hair } from './strip-stack.ts';
import type { UnitMark } from './unit-marks.ts';
import { onView, type View } from './view.ts';
import type { WayBundle } from './way-bundles.ts';

interface Boat {
  readonly index: DrawnBoat;
  readonly plan: Plan;
  readonly frame: SheetFrame;
  readonly bundles: readonly WayBundle[];
  /** every unit, and those whose balloons stand in this view */
  readonly marks: readonly UnitMark[];
  readonly own: readonly UnitMark[];
}

const placesWithKit = (index: DrawnBoat): Place[] =>
  [...new Set(index.boat.kit.map((unit) => unit.place))].flatMap((id) => index.places.get(id) ?? []);

/** What a millimetre of each of the boat's own lines under a label costs. */
const lineCosts: Readonly<Record<HullPart['role'], number>> = {
  hull: 3,
  house: 2,
  underbody: 1,
  glass: 0.6,
  spar: 1,
  trim: 0.7,
  rig: 0.5,
};

/** A word on the waterline reads as struck out. */
const waterCost = 2;

const waterline = (view: View): SoftLine[] => {
  if (view.name === 'top') return [];
  const [, yMm] = view.point(0, 0);
  return [{ from: [view.box.leftMm, yMm], to: [view.box.rightMm, yMm], costPerMm: waterCost }];
};

const softLines = (view: View, parts: readonly HullPart[], hairs: readonly Hair[]): SoftLine[] => [
  ...waterline(view),
  ...parts.flatMap((part) =>
    flattenPath(part.steps.map((step) => onView(view, step))).map(
      ([from, to]): SoftLine => ({ from, to, costPerMm: lineCosts[part.role] }),
    ),
  ),
  ...hairs.map(([from, to]): SoftLine => ({ from, to, costPerMm: 1 })),
];

/** Under the turn of the bilge, where a keel leaves room. */
const asternCaption = ({ box, point }: View, frame: SheetFrame): Shape => ({
  kind: 'text',
  xMm: point(0, 0)[0] - (frame.centreMm - frame.top.topMm),
  yMm: box.bottomMm - 1.6,
  text: 'from astern',
  sizeMm: 2.95,
  face: 'words',
  ink: 'quiet',
});

/** One view of the boat: her own lines, hair lines, the lines of the plan, the places, the balloons. */
export const boatView = (
  view: View,
  { parts, hairs, boat }: { parts: readonly HullPart[]; hairs: readonly Hair[]; boat: Boat },
): { shapes: Shape[]; named: readonly number[] } => {
  const { index, plan, frame, bundles, marks, own } = boat;
  const lines = linesOnView({ view, bundles, index });
  const under = [
    ...(view.name === 'top' ? [] : breakLine(view, frame)),
    ...(view.name === 'astern' ? [asternCaption(view, frame)] : []),
    ...hullOnView(view, parts),
    ...hairs.map((hair) => pathShape(polyline(hair), { stroke: { ink: 'quiet', widthMm: 0.12 } })),
    ...lines.shapes,
    ...placeMarks({ view, frame, index, plan, marks }),
  ];
  const balloons = balloonsOnView({
    view,
    marks: own,
    runs: lines.runs,
    soft: softLines(view, parts, hairs),
    points: placesWithKit(index).map(view.at),
    taken: textsOf(under).map(textBox),
    radiusMm: frame.radiusMm,
    words: !frame.narrow,
  });
  return { shapes: [...under, ...balloons.shapes], named: balloons.named };
};
