import { type Box, overlaps, textBox } from '../drawing/box.ts';
import { pathShape } from '../drawing/marks.ts';
import type { Point } from '../drawing/point.ts';
import { polygon, polyline } from '../drawing/polyline.ts';
import type { Shape, TextShape } from '../drawing/shapes.ts';
import type { PlacedStrip } from './strip-layout.ts';
import { stripFigures } from './strip-words.ts';

/** Height of the curve with its caption. */
export const curveHeightMm = 16.5;

const captionMm = 3.05;

interface Volt {
  readonly xMm: number;
  readonly lowestV: number;
  readonly about: readonly string[];
}

const voltsOf = (placed: PlacedStrip): Volt[] =>
  placed.nodes.flatMap((node) =>
    node.lowestV === undefined ? [] : [{ xMm: node.xMm, lowestV: node.lowestV, about: node.mark?.about ?? [] }],
  );

/** Whether anything on this strip has volts to show. */
export const hasVolts = (placed: PlacedStrip): boolean => placed.nodes.some((node) => node.lowestV !== undefined);

/** Lowest first, then highest, then from left to right: the figures that matter get the room. */
const byWeight = (volts: readonly Volt[]): Volt[] => {
  const sorted = [...volts].sort((a, b) => a.lowestV - b.lowestV || a.xMm - b.xMm);
  const first = sorted.slice(0, 1);
  const last = sorted.length > 1 ? sorted.slice(-1) : [];
  return [...first, ...last, ...volts.filter((volt) => !first.includes(volt) && !last.includes(volt))];
};

/** Figures beside their points where no other figure stands. */
const figuresOf = (volts: readonly Volt[], at: (volt: Volt) => Point, taken: Box[]): TextShape[] => {
  const shapes: TextShape[] = [];
  for (const volt of byWeight(volts)) {
    const [xMm, yMm] = at(volt);
    const text: TextShape = {
      kind: 'text',
      xMm,
      yMm: yMm - 1.6,
      text: volt.lowestV.toFixed(2),
      ...stripFigures,
      anchor: 'middle',
      ink: 'quiet',
      about: volt.about,
    };
    const box = textBox(text);
    if (taken.some((other) => overlaps(other, { ...box, leftMm: box.leftMm - 1, rightMm: box.rightMm + 1 }))) continue;
    taken.push(box);
    shapes.push(text);
  }
  return shapes;
};

/** The volts at each plug under the strip, at the same x as its tee: the lower the point, the less is left. */
export const voltsCurve = ({
  placed,
  topMm,
  widthMm,
}: {
  placed: PlacedStrip;
  topMm: number;
  widthMm: number;
}): Shape | undefined => {
  const volts = voltsOf(placed);
  const first = volts[0];
  const last = volts.at(-1);
  if (first === undefined || last === undefined) return undefined;
  const baseMm = topMm + curveHeightMm - 4.6;
  const highMm = topMm + 4.6;
  const least = Math.min(...volts.map((volt) => volt.lowestV));
  const most = Math.max(...volts.map((volt) => volt.lowestV));
  const share = (volt: Volt): number =>
    most - least < 0.005 ? 0.6 : 0.25 + (0.75 * (volt.lowestV - least)) / (most - least);
  const at = (volt: Volt): Point => [volt.xMm, baseMm - share(volt) * (baseMm - highMm)];
  const line = volts.map(at);
  const dots = volts.map((volt): Shape => {
    const [xMm, yMm] = at(volt);
    return { kind: 'circle', xMm, yMm, radiusMm: 0.7, fill: 'data', about: volt.about };
  });
  const caption: TextShape = {
    kind: 'text',
    xMm: Math.min(Math.max(last.xMm, 70), widthMm - 3),
    yMm: baseMm + 4,
    text: 'volts at the plug, bank at its lowest',
    sizeMm: captionMm,
    face: 'words',
    anchor: 'end',
    ink: 'quiet',
  };
  return {
    kind: 'group',
    label: 'volts at the plug of each device',
    shapes: [
      pathShape(polygon([[first.xMm, baseMm], ...line, [last.xMm, baseMm]]), { fill: 'water' }),
      pathShape(polyline(line), { stroke: { ink: 'data', widthMm: 0.3 } }),
      ...dots,
      ...figuresOf(volts, at, []),
      caption,
    ],
  };
};
