import type { Boat } from '../../core/boat/boat-schema.ts';
import { type HullPart, hullPattern } from '../../core/facts/hull-patterns.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { pathShape } from '../drawing/marks.ts';
import type { Point } from '../drawing/point.ts';
import { polyline, rectangle } from '../drawing/polyline.ts';
import type { Drawing, PathShape, Shape } from '../drawing/shapes.ts';
import { wrapText } from '../drawing/wrap-text.ts';
import { unitVolts } from '../power/volts-at-load.ts';
import { axis } from './axis.ts';
import { boatView } from './boat-view.ts';
import type { CurveKind } from './curve-kinds.ts';
import { type DrawnBoat, drawnBoat } from './drawn-boat.ts';
import { hullOnView } from './hull-on-view.ts';
import { isConverter } from './languages-of.ts';
import { codedKinds, codeOf } from './line-code.ts';
import { type KeyContents, lineKey } from './line-key.ts';
import { numberKey, numberRowMm } from './number-key.ts';
import { isNarrow, type SheetFrame, sheetFrame } from './sheet-frame.ts';
import { sheetUnits } from './sheet-units.ts';
import { leastStripMm } from './strip-layout.ts';
import { type StripOfBus, stripOfBus } from './strip-nodes.ts';
import { stripStack, stripStackMm } from './strip-stack.ts';
import { type UnitMark, unitMarks } from './unit-marks.ts';
import { asternView, type ScaledView, sideView, topView, type View } from './view.ts';
import { viewOfMarks } from './view-of-marks.ts';
import { type WayBundle, wayBundles } from './way-bundles.ts';

/** Which lines the sheet is about: with `power` the feeds are drawn as well. */
export type SheetStep = 'lines' | 'power';

export interface SheetBalloon {
  readonly number: number;
  /** ids that this balloon stands for */
  readonly about: readonly string[];
  readonly label: string;
  /** ids of the findings (danger, fault, doubt) that fill it */
  readonly findings: readonly string[];
}

export interface BoatSheet {
  readonly drawing: Drawing;
  /** the few lines by which the whole sheet is known when it is drawn very small: hulls and trunks */
  readonly overview: readonly PathShape[];
  readonly balloons: readonly SheetBalloon[];
  /** where each place of the boat lies, by its id, in each view */
  readonly points: readonly ReadonlyMap<string, Point>[];
  /** the views in the same order, as maps between metres aboard and the sheet */
  readonly views: readonly ScaledView[];
}

interface Request {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly step?: SheetStep;
  /** in which lengths are written; metres unless told */
  readonly units?: keyof typeof sheetUnits;
  /** what the curve under a lying strip tells */
  readonly curve?: CurveKind;
}

const keyOf = (bundles: readonly WayBundle[], { plan, index }: { plan: Plan; index: DrawnBoat }): KeyContents => {
  const drawn = new Set(bundles.flatMap((bundle) => bundle.lanes.map((lane) => lane.code)));
  const onStrip = plan.buses.length > 0 ? [codeOf('trunk'), codeOf('drop')] : [];
  const coded = codedKinds.map(codeOf).filter((code) => drawn.has(code) || onStrip.includes(code));
  const leaving = [...drawn].filter((code) => !codedKinds.some((kind) => codeOf(kind) === code));
  return {
    codes: [...coded, ...leaving],
    guessed: bundles.some((bundle) => bundle.guessed),
    trunk: plan.buses.length > 0,
    converters: [...index.sheetOf.values()].some(isConverter),
  };
};

/** Often enough: the strips grow by a line of words at a time. */
const fittings = 4;

/** The strips' height depends on the scale and the scale on their height: fitted until the strips need no more room. */
const frameFor = ({
  request,
  strips,
  index,
  keyMm,
}: {
  request: Request;
  strips: readonly StripOfBus[];
  index: DrawnBoat;
  keyMm: number;
}): SheetFrame => {
  const { boat, heightMm } = request;
  const widthMm = isNarrow(request.widthMm) ? request.widthMm : Math.max(request.widthMm, ...strips.map(leastStripMm));
  let belowMm = keyMm;
  let frame = sheetFrame({ boat, widthMm, heightMm, belowMm });
  for (let round = 0; round < fittings; round++) {
    const neededMm = stripStackMm(strips, frame, index) + keyMm;
    if (neededMm <= belowMm) break;
    belowMm = neededMm;
    frame = sheetFrame({ boat, widthMm, heightMm, belowMm });
  }
  return frame;
};

/** The water under a view, across the whole sheet. */
const waterShapes = (
  widthMm: number,
  { waterMm, bottomMm }: { waterMm: number; bottomMm: number },
): { tint: Shape; line: Shape } => ({
  tint: pathShape(rectangle({ leftMm: 0, topMm: waterMm, widthMm, heightMm: bottomMm - waterMm }), { fill: 'water' }),
  line: pathShape(
    polyline([
      [0, waterMm],
      [widthMm, waterMm],
    ]),
    { stroke: { ink: 'quiet', widthMm: 0.18, dashMm: [4, 1, 0.6, 1] } },
  ),
});

/** On a narrow sheet the boat seen from astern stands in water of her own. */
const watersOf = (frame: SheetFrame): { tint: Shape; line: Shape }[] => [
  waterShapes(frame.widthMm, { waterMm: frame.waterMm, bottomMm: frame.side.bottomMm }),
  ...(frame.astern === undefined || frame.astern.waterMm === frame.waterMm
    ? []
    : [waterShapes(frame.widthMm, frame.astern)]),
];

const viewWords: Readonly<Record<View['name'], string>> = {
  side: 'the boat from the side',
  top: 'the boat from above',
  astern: 'the boat from astern',
};

const trunksOf = (shapes: readonly Shape[]): PathShape[] =>
  shapes.flatMap((shape) => {
    if (shape.kind === 'group') return trunksOf(shape.shapes);
    return shape.kind === 'path' && shape.stroke?.widthMm === codeOf('trunk').widthMm ? [shape] : [];
  });

const overviewOf = (
  views: readonly { view: View; parts: readonly HullPart[] }[],
  shapes: readonly Shape[],
): PathShape[] => [
  ...views.flatMap(({ view, parts }) =>
    hullOnView(
      view,
      parts.filter((part) => part.role === 'hull' || part.role === 'house'),
    ),
  ),
  ...trunksOf(shapes),
];

const balloonOf = (mark: UnitMark): SheetBalloon => ({
  number: mark.number,
  about: mark.about,
  label: mark.told,
  findings: mark.findings,
});

const footStyle = { sizeMm: 2.95, face: 'words' } as const;

/** Key of the lines, and the numbers that found no words above. */
const footShapes = ({
  key,
  marks,
  frame,
  topMm,
  says,
}: {
  key: KeyContents;
  marks: readonly UnitMark[];
  frame: SheetFrame;
  topMm: number;
  /** a line under all of it */
  says: string | undefined;
}): { shapes: Shape[]; bottomMm: number } => {
  const { widthMm } = frame;
  const lines = lineKey({ contents: key, widthMm, topMm: topMm + 1.5 });
  const numbers = numberKey({ marks, widthMm, topMm: topMm + 1.5 + lines.heightMm });
  const shapes = marks.length === 0 ? [lines.shape] : [lines.shape, numbers.shape];
  const bottomMm = topMm + 1.5 + lines.heightMm + numbers.heightMm + 1.5;
  if (says === undefined) return { shapes, bottomMm };
  const words: Shape[] = (wrapText(says, footStyle, widthMm - 10) ?? []).map((line, at) => ({
    kind: 'text',
    xMm: 5,
    yMm: bottomMm + 2.2 + at * numberRowMm,
    text: line,
    ...footStyle,
    ink: 'quiet',
  }));
  return { shapes: [...shapes, ...words], bottomMm: bottomMm + words.length * numberRowMm };
};

/**
 * The boat sheet: from the side, from above, where masts or two hulls ask for it from astern, and her buses as strips,
 * on one scale, bow to the right.
 * The sheet is as wide and high as asked, or larger where the boat would be too small to read; millimetres.
 */
export const boatSheet = (request: Request): BoatSheet => {
  const { boat, plan, step = 'lines', curve = 'volts' } = request;
  const units = sheetUnits[request.units ?? 'metres'];
  const index = drawnBoat(boat);
  const marks = unitMarks({ boat, index, plan, ...(step === 'power' ? { tells: unitVolts(plan) } : {}) });
  const bundles = wayBundles({ plan, index, withFeeds: step === 'power' });
  const strips = plan.buses.map((bus) => stripOfBus({ bus, plan, index, marks, units, withAll: step === 'power' }));
  const key = keyOf(bundles, { plan, index });
  const keyMm = lineKey({ contents: key, widthMm: request.widthMm, topMm: 0 }).heightMm + 3 + numberRowMm;
  const frame = frameFor({ request, strips, index, keyMm });
  const top = topView(frame);
  const astern = asternView(frame);
  const views = [sideView(frame), top, ...(astern === undefined ? [] : [astern])];
  const stack = stripStack({ strips, frame, index, view: top, curve });
  const hull = hullPattern(boat.hull);
  const waters = watersOf(frame);
  const owners = viewOfMarks(marks, views);
  const drawnViews = views.map((view) => ({
    view,
    ...boatView(view, {
      parts: hull[view.name],
      hairs: view === top ? stack.hairs : [],
      boat: { index, plan, frame, bundles, marks, own: owners.get(view.name) ?? [] },
    }),
  }));
  // the strip says the name of a unit, not what is told of it
  const whole = new Set(marks.filter((mark) => mark.told === mark.label).map(({ number }) => number));
  const named = new Set([
    ...[...stack.named].filter((number) => whole.has(number)),
    ...drawnViews.flatMap((view) => view.named),
  ]);
  const foot = footShapes({
    key,
    marks: marks.filter((mark) => !named.has(mark.number)),
    frame,
    topMm: stack.bottomMm,
    says:
      step === 'power' && plan.supplies.length > 0
        ? 'Volts at each unit are with everything drawing and the bank at its lowest.'
        : undefined,
  });
  const shapes: Shape[] = [
    ...waters.map((water) => water.tint),
    axis({ boat, frame, units, bottomMm: frame.top.bottomMm }),
    ...waters.map((water) => water.line),
    ...drawnViews.map(
      ({ view, shapes: drawn }): Shape => ({ kind: 'group', label: viewWords[view.name], shapes: drawn }),
    ),
    ...stack.shapes,
    ...foot.shapes,
  ];
  return {
    drawing: {
      title: `${boat.name}: from the side, from above, ${astern === undefined ? '' : 'from astern, '}and her backbone as a strip`,
      widthMm: frame.widthMm,
      heightMm: Math.max(request.heightMm, foot.bottomMm),
      shapes,
    },
    overview: overviewOf(
      views.map((view) => ({ view, parts: hull[view.name] })),
      shapes,
    ),
    balloons: marks.map(balloonOf),
    points: views.map((view) => new Map(boat.places.map((place) => [place.id, view.at(place)]))),
    views,
  };
};
