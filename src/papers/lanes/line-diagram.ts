import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { between, type Point } from '../drawing/point.ts';
import type { Drawing, Shape } from '../drawing/shapes.ts';
import { wrapText } from '../drawing/wrap-text.ts';
import { axis } from '../sheet/axis.ts';
import { type DrawnBoat, drawnBoat } from '../sheet/drawn-boat.ts';
import { isConverter } from '../sheet/languages-of.ts';
import { codedKinds, codeOf } from '../sheet/line-code.ts';
import { type KeyEntry, lineKey } from '../sheet/line-key.ts';
import { numberKey } from '../sheet/number-key.ts';
import { isNarrow } from '../sheet/sheet-frame.ts';
import { sheetUnits } from '../sheet/sheet-units.ts';
import { type UnitMark, unitMarks } from '../sheet/unit-marks.ts';
import { type LaneBreak, laneBreaks } from './break-marks.ts';
import { radioCode } from './lane-code.ts';
import type { BreaksOf } from './lane-row-shapes.ts';
import { type Lane, type LaneUnit, laneTree } from './lane-tree.ts';
import { cutStrokes, gutterMm, layLane, leastSheetMm, lyingLane, tieFeet } from './lying-lane.ts';
import { uprightLane } from './upright-lane.ts';

interface Request {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly widthMm: number;
  readonly units?: keyof typeof sheetUnits;
}

/** What the lanes of one boat are drawn from. */
export interface LanesKnown {
  readonly boat: Boat;
  readonly index: DrawnBoat;
  readonly lanes: readonly Lane[];
  readonly breaks: BreaksOf;
  readonly units: (typeof sheetUnits)[keyof typeof sheetUnits];
}

/** Every unit of a lane with what it hangs on. */
const walked = (lane: Lane): { unit: LaneUnit; on: LaneUnit | undefined }[] => {
  const under = (unit: LaneUnit, on: LaneUnit | undefined): { unit: LaneUnit; on: LaneUnit | undefined }[] => [
    { unit, on },
    ...unit.hangs.flatMap((one) => under(one, unit)),
  ];
  return lane.heads.flatMap((head) => under(head, lane.hub));
};

const idOf = (unit: LaneUnit | undefined): string => unit?.mark.kit.id ?? '';

/** Each break on the line between its two units where one is drawn, else on the line to the far one. */
export const breaksOn = (lanes: readonly Lane[], breaks: readonly LaneBreak[]): BreaksOf => {
  const all = lanes.flatMap(walked);
  const byUnit = new Map<LaneUnit, LaneBreak[]>();
  for (const one of breaks) {
    const between = all.find(
      ({ unit, on }) => one.units.length > 1 && [unit, on].every((end) => one.units.includes(idOf(end))),
    );
    const far = one.units
      .map((id) => all.find(({ unit }) => !unit.again && idOf(unit) === id))
      .findLast((at) => at !== undefined);
    const unit = (between ?? far)?.unit;
    if (unit !== undefined) byUnit.set(unit, [...(byUnit.get(unit) ?? []), one]);
  }
  return byUnit;
};

/** Units of a lane from which a line leads on down to the next. */
const tiedIn = (lanes: readonly Lane[], at: number): ReadonlySet<string> =>
  new Set(lanes[at + 1]?.ties.map(({ unit }) => unit));

const lyingShapes = (
  { boat, index, lanes, breaks, units }: LanesKnown,
  widthMm: number,
): { shapes: Shape[]; bottomMm: number } => {
  const zeroMm = gutterMm + 4;
  const scale = { widthMm, zeroMm, mmPerM: (widthMm - zeroMm - 14) / boat.hull.lengthM };
  let topMm = 10;
  let feet: ReadonlyMap<string, Point> = new Map();
  const shapes = lanes.map((lane, at) => {
    const laid = layLane(lane, index, scale, tiedIn(lanes, at));
    const yMm = topMm + laid.aboveMm;
    const shape = lyingLane(laid, yMm, { index, breaks, feet });
    feet = tieFeet(laid, yMm);
    topMm = yMm + laid.belowMm + 4;
    return shape;
  });
  const frame = { zeroMm: scale.zeroMm, mmPerM: scale.mmPerM };
  return { shapes: [axis({ boat, frame, units, bottomMm: topMm }), ...shapes], bottomMm: topMm };
};

const uprightShapes = (
  { index, lanes, breaks }: LanesKnown,
  widthMm: number,
): { shapes: Shape[]; bottomMm: number } => {
  let topMm = 2;
  const shapes = lanes.map((lane) => {
    const { shape, bottomMm } = uprightLane(lane, { index, breaks, topMm, widthMm });
    topMm = bottomMm + 3;
    return shape;
  });
  return { shapes, bottomMm: topMm };
};

const footStyle = { sizeMm: 2.95, face: 'words' } as const;
const footLineMm = 4.2;

/** What else must be said: rings that are broken, crosses, units with no line of data. */
const footWords = ({ lanes, breaks }: LanesKnown): string[] => {
  const units = lanes.flatMap(walked).map(({ unit }) => unit);
  const crossed = [...breaks.values()].flat().flatMap(({ readings }) => readings);
  return [
    ...(lanes.length === 0
      ? ['No line of data yet. Join two units at the step Lines, and the lines are drawn here.']
      : []),
    ...(units.some(({ again }) => again)
      ? ['A number in a broken ring stands once more, where its own place is.']
      : []),
    ...(units.some(({ mark }) => mark.findings.length > 0)
      ? ['A filled number has a finding that is still open.']
      : []),
    ...(crossed.length === 0 ? [] : [`× Here breaks the way of: ${crossed.join('; ')}.`]),
  ];
};

const cutEntry: KeyEntry = {
  words: 'goes on in the next part',
  draw: ([from, to]) => (from && to ? cutStrokes(between(from, to, 0.5), []) : []),
};

/** Key and notes under the lanes, their top at `topMm`. */
export const footShapes = (
  known: LanesKnown,
  marks: readonly UnitMark[],
  { topMm, widthMm }: { topMm: number; widthMm: number },
) => {
  const { lanes, index } = known;
  const units = lanes.flatMap(walked).map(({ unit }) => unit);
  const edges = [
    ...units.flatMap(({ edge }) => edge ?? []),
    ...lanes.flatMap(({ ties }) => ties.map(({ edge }) => edge)),
  ];
  const drawn = new Set(edges.map(({ kind }) => kind));
  const isBus = lanes.some(({ kind }) => kind === 'bus');
  const contents = {
    codes: [
      ...codedKinds.filter((kind) => drawn.has(kind) || (isBus && ['trunk', 'drop'].includes(kind))).map(codeOf),
      ...(drawn.has('radio') ? [radioCode] : []),
    ],
    guessed: lanes.some(({ strip }) => strip?.stretches.some(({ guessed }) => guessed) === true),
    trunk: isBus,
    converters: units.some(({ mark }) => isConverter(index.sheetOf.get(mark.kit.id))),
    more: lanes.some(({ cuts }) => cuts !== undefined) ? [cutEntry] : [],
  };
  const key = lineKey({ contents, widthMm, topMm: topMm + 1.5 });
  const words = footWords(known).flatMap((text) => wrapText(text, footStyle, widthMm - 10) ?? []);
  const wordsMm = topMm + 1.5 + key.heightMm;
  const shown = new Set([
    ...units.map(idOf),
    ...lanes.map(({ hub }) => idOf(hub)),
    ...lanes.flatMap(({ ties }) => ties.map(({ unit }) => unit)),
  ]);
  const silent = marks.filter(({ kit }) => !shown.has(kit.id));
  const silentMm = wordsMm + words.length * footLineMm;
  const text = (line: string, yMm: number): Shape => ({
    kind: 'text',
    xMm: 5,
    yMm,
    text: line,
    ...footStyle,
    ink: 'quiet',
  });
  const numbers = numberKey({ marks: silent, widthMm, topMm: silentMm + footLineMm });
  return {
    shapes: [
      key.shape,
      ...words.map((line, at) => text(line, wordsMm + 3 + at * footLineMm)),
      ...(silent.length === 0 ? [] : [text('With no line of data:', silentMm + 3), numbers.shape]),
    ],
    bottomMm: silentMm + (silent.length === 0 ? 0 : footLineMm + numbers.heightMm) + 3,
  };
};

/**
 * The data network of a boat as lanes under one another, bow to the right: every bus with its tees, every network with
 * its hub, and on each unit whatever speaks to it alone. A narrow sheet has the lanes from top to bottom. As wide as
 * asked, or wider where words would touch; as high as it needs to be. Millimetres.
 */
export const lineDiagram = ({ boat, plan, widthMm, units = 'metres' }: Request): Drawing => {
  const index = drawnBoat(boat);
  const marks = unitMarks({ boat, index, plan });
  const narrow = isNarrow(widthMm);
  const lanes = laneTree({ plan, index, marks, units: sheetUnits[units], withTies: !narrow });
  const labels = new Map(marks.map(({ kit, label }) => [kit.id, label]));
  const breaks = breaksOn(lanes, laneBreaks(plan, labels));
  const known = { boat, index, lanes, breaks, units: sheetUnits[units] };
  const sheetMm = narrow
    ? widthMm
    : Math.max(widthMm, ...lanes.map((lane, at) => leastSheetMm(lane, index, tiedIn(lanes, at))));
  const drawn = narrow ? uprightShapes(known, sheetMm) : lyingShapes(known, sheetMm);
  const foot = footShapes(known, marks, { topMm: drawn.bottomMm, widthMm: sheetMm });
  return {
    title: `${boat.name}: her lines of data`,
    widthMm: sheetMm,
    heightMm: foot.bottomMm,
    shapes: [...drawn.shapes, ...foot.shapes],
  };
};
