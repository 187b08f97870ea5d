import { type Box, overlaps, textBox } from '../drawing/box.ts';
import { pathShape } from '../drawing/marks.ts';
import type { Point } from '../drawing/point.ts';
import { polygon, polyline } from '../drawing/polyline.ts';
import type { Shape, TextShape } from '../drawing/shapes.ts';
import { textWidthMm } from '../drawing/text-width.ts';
import { type Curve, type CurveKind, type CurvePoint, curveKinds, curveOf } from './curve-kinds.ts';
import { figureIn } from './sheet-units.ts';
import type { PlacedStrip } from './strip-layout.ts';
import { stripFigures, stripWords } from './strip-words.ts';

/** Height of the curve with its caption and axis. */
export const curveHeightMm = 21;

/** Room over the plot for the figures of its highest points, and under it for the axis. */
const headMm = 4.8;
const footMm = 4.8;

/** Air between two figures. */
const airMm = 1;

/** Whether any curve of this strip has something to show. */
export const hasCurve = (placed: PlacedStrip): boolean =>
  curveKinds.some((kind) => curveOf(placed, kind).points.length > 0);

interface Plot {
  readonly curve: Curve;
  readonly baseMm: number;
  readonly leftMm: number;
  readonly rightMm: number;
  readonly yMm: (value: number) => number;
}

const plotOf = (curve: Curve, { topMm, xs }: { topMm: number; xs: readonly number[] }): Plot => {
  const values = [
    ...curve.points.map((point) => point.value),
    ...(curve.limit === undefined ? [] : [curve.limit.value]),
    ...(curve.fromValue === undefined ? [] : [curve.fromValue]),
  ];
  const least = Math.min(...values);
  const spread = Math.max(Math.max(...values) - least, 0.001);
  const baseMm = topMm + curveHeightMm - footMm;
  const highMm = topMm + headMm;
  return {
    curve,
    baseMm,
    leftMm: Math.min(...xs),
    rightMm: Math.max(...xs),
    yMm: (value) => baseMm - ((value - least) / spread) * (baseMm - highMm),
  };
};

/** Lowest first, then highest, then from left to right: the figures that matter get the room. */
const byWeight = (points: readonly CurvePoint[]): CurvePoint[] => {
  const sorted = [...points].sort((a, b) => a.value - b.value || a.xMm - b.xMm);
  const first = sorted.slice(0, 1);
  const last = sorted.length > 1 ? sorted.slice(-1) : [];
  return [...first, ...last, ...points.filter((point) => !first.includes(point) && !last.includes(point))];
};

const isFree = (text: TextShape, taken: readonly Box[]): boolean => {
  const box = textBox(text);
  return !taken.some((other) => overlaps(other, { ...box, leftMm: box.leftMm - airMm, rightMm: box.rightMm + airMm }));
};

/** Figures over or under their points where no other text and no limit stands; one that repeats the last says nothing. */
const figuresOf = ({ curve, yMm }: Plot, taken: Box[]): TextShape[] => {
  const shapes: TextShape[] = [];
  const all = curve.figuresAt ?? curve.points;
  const fresh = all.filter(({ value }, at) => at === 0 || all[at - 1]?.value !== value);
  for (const { xMm, value, about } of byWeight(fresh)) {
    const over: TextShape = {
      kind: 'text',
      xMm,
      yMm: yMm(value) - 1.6,
      text: value.toFixed(curve.decimals),
      ...stripFigures,
      anchor: 'middle',
      ink: 'quiet',
      about,
    };
    const text = [over, { ...over, yMm: yMm(value) + 3.6 }].find((one) => isFree(one, taken));
    if (text === undefined) continue;
    taken.push(textBox(text));
    shapes.push(text);
  }
  return shapes;
};

/** The limit as a dashed line with its figure at the right end, where the curve itself lies out of its way. */
const limitShapes = ({ curve, leftMm, rightMm, yMm }: Plot, widthMm: number): { shapes: Shape[]; taken: Box[] } => {
  const { limit } = curve;
  if (limit === undefined) return { shapes: [], taken: [] };
  const y = yMm(limit.value);
  const text = `${limit.words} ${Number(limit.value.toFixed(2))} ${curve.unit}`;
  const wideMm = textWidthMm(text, stripFigures);
  const line: Point[] = [
    [leftMm, y],
    [rightMm, y],
  ];
  const word: TextShape = {
    kind: 'text',
    xMm: Math.min(rightMm + 1.2 + wideMm, widthMm - 2),
    yMm: y - 0.9,
    text,
    ...stripFigures,
    anchor: 'end',
    ink: 'power',
  };
  return {
    shapes: [pathShape(polyline(line), { stroke: { ink: 'power', widthMm: 0.25, dashMm: [2, 1] } }), word],
    taken: [textBox(word), { leftMm, rightMm, topMm: y - 0.15, bottomMm: y + 0.15 }],
  };
};

const captionShape = ({ curve, baseMm, leftMm }: Plot): TextShape => ({
  kind: 'text',
  xMm: leftMm,
  yMm: baseMm + 4,
  text: `${curve.unit}: ${curve.caption}`,
  ...stripWords,
  ink: 'quiet',
});

/** Metres or feet along the trunk under the stops, where the strip is not drawn under the boat. */
const metresShapes = (placed: PlacedStrip, baseMm: number, taken: Box[]): Shape[] => {
  const { order, units } = placed.strip;
  if (order === 'axis') return [];
  const stops = placed.nodes.filter((node, at) => placed.nodes[at - 1]?.stop !== node.stop);
  return stops.flatMap((node, at): Shape[] => {
    const text: TextShape = {
      kind: 'text',
      xMm: node.xMm,
      yMm: baseMm + 4,
      text: `${figureIn(units, node.alongM)}${at === stops.length - 1 ? ` ${units.word}` : ''}`,
      ...stripFigures,
      anchor: 'middle',
      ink: 'quiet',
      about: [node.place],
    };
    if (!isFree(text, taken)) return [];
    taken.push(textBox(text));
    const tick: Point[] = [
      [node.xMm, baseMm],
      [node.xMm, baseMm + 0.9],
    ];
    return [pathShape(polyline(tick), { stroke: { ink: 'quiet', widthMm: 0.18 } }), text];
  });
};

/**
 * A curve along the trunk under its strip, each point at the x of its tee: volts at the plugs, volts lost, or the load
 * that each stretch carries; with its axis, its unit and the line it must keep to. Undefined where nothing is known.
 */
export const trunkCurve = ({
  placed,
  kind,
  topMm,
  widthMm,
}: {
  placed: PlacedStrip;
  kind: CurveKind;
  topMm: number;
  widthMm: number;
}): Shape | undefined => {
  const curve = curveOf(placed, kind);
  const [first, last] = [curve.points[0], curve.points.at(-1)];
  if (first === undefined || last === undefined) return undefined;
  const plot = plotOf(curve, { topMm, xs: placed.nodes.map((node) => node.xMm) });
  const line = curve.points.map(({ xMm, value }): Point => [xMm, plot.yMm(value)]);
  const base: Point[] = [
    [plot.leftMm, plot.baseMm],
    [plot.rightMm, plot.baseMm],
  ];
  const limit = limitShapes(plot, widthMm);
  const caption = captionShape(plot);
  const taken = [...limit.taken, textBox(caption)];
  // a curve in steps has no points of its own
  const dots = curve.figuresAt === undefined ? curve.points : [];
  return {
    kind: 'group',
    label: curve.caption,
    shapes: [
      pathShape(polygon([[first.xMm, plot.baseMm], ...line, [last.xMm, plot.baseMm]]), { fill: 'water' }),
      pathShape(polyline(base), { stroke: { ink: 'quiet', widthMm: 0.18 } }),
      ...limit.shapes,
      pathShape(polyline(line), { stroke: { ink: 'data', widthMm: 0.3 } }),
      ...dots.map(
        ({ xMm, value, about }): Shape => ({
          kind: 'circle',
          xMm,
          yMm: plot.yMm(value),
          radiusMm: 0.7,
          fill: 'data',
          about,
        }),
      ),
      ...figuresOf(plot, taken),
      caption,
      ...metresShapes(placed, plot.baseMm, taken),
    ],
  };
};
