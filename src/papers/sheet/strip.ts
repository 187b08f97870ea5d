import type { Boat } from '../../core/boat/boat-schema.ts';
import { balloon, endSquare, pathShape, teeSquare } from '../drawing/marks.ts';
import type { Point } from '../drawing/point.ts';
import { polygon, polyline } from '../drawing/polyline.ts';
import type { Shape, TextShape } from '../drawing/shapes.ts';
import { codedStrokes } from './coded-strokes.ts';
import { fuseOf } from './fuse-of.ts';
import { lineCode } from './line-code.ts';
import { dropMm, type PlacedNode, type PlacedStrip, radiusMm, stretchText } from './strip-layout.ts';
import { stripFigures, stripLineMm, stripWords } from './strip-words.ts';
import { trunkPieces } from './trunk-pieces.ts';
import type { UnitMark } from './unit-marks.ts';

interface StripDrawing {
  readonly trunkYMm: number;
  readonly boat: Boat;
}

const figures = (text: string, at: Point, look: Pick<TextShape, 'anchor' | 'ink' | 'about'>): TextShape => ({
  kind: 'text',
  xMm: at[0],
  yMm: at[1],
  text,
  ...stripFigures,
  ...look,
});

const trunkShapes = (placed: PlacedStrip, y: number): Shape[] => {
  const { nodes, strip, stretchWords } = placed;
  return trunkPieces(strip).flatMap(({ from, about, guessed, stretch }): Shape[] => {
    const [fromMm, toMm] = [nodes[from]?.xMm ?? 0, nodes[from + 1]?.xMm ?? 0];
    const line: Point[] = [
      [fromMm, y],
      [toMm, y],
    ];
    const strokes = codedStrokes(line, { code: lineCode.trunk, guessed, about });
    if (stretch === undefined || !stretchWords) return strokes;
    const middle: Point = [(fromMm + toMm) / 2, y - 1.7];
    return [...strokes, figures(stretchText(stretch, strip.units), middle, { anchor: 'middle', ink: 'quiet', about })];
  });
};

/** The words of a node beyond its balloon. */
const wordShapes = (node: PlacedNode, yMm: number): TextShape[] =>
  node.words.map((line, order) => ({
    kind: 'text',
    xMm: node.xMm,
    yMm: (node.up ? yMm - (node.words.length - 1) * stripLineMm : yMm) + order * stripLineMm,
    text: line,
    ...stripWords,
    anchor: 'middle',
    ink: 'ink',
    about: node.mark?.about ?? [],
  }));

const dropShapes = (node: PlacedNode, trunkYMm: number): Shape[] => {
  const sign = node.up ? -1 : 1;
  const about = node.drop === undefined ? [] : [node.drop.id];
  const line: Point[] = [
    [node.xMm, trunkYMm],
    [node.xMm, trunkYMm + sign * dropMm],
  ];
  const { code, guessed } = { code: lineCode.drop, guessed: node.drop?.guessed ?? false };
  const length = node.dropText;
  return [
    ...codedStrokes(line, { code, guessed, about }),
    ...(length === undefined
      ? []
      : [figures(length, [node.xMm + 0.8, trunkYMm + sign * 5.9 + 1], { ink: 'quiet', about })]),
  ];
};

const balloonShapes = (node: PlacedNode, mark: UnitMark, trunkYMm: number): Shape => {
  const sign = node.up ? -1 : 1;
  const centre: Point = [node.xMm, trunkYMm + sign * (dropMm + radiusMm)];
  const wordsY = node.up ? centre[1] - radiusMm - 1.2 : centre[1] + radiusMm + 3;
  return {
    kind: 'group',
    label: `${mark.number}, ${mark.kit.name}`,
    focusable: true,
    about: mark.about,
    shapes: [
      ...balloon(centre, { number: mark.number, radiusMm, filled: mark.findings.length > 0, about: mark.about }),
      ...wordShapes(node, wordsY),
    ],
  };
};

const deviceShapes = (node: PlacedNode, trunkYMm: number): Shape[] => [
  ...dropShapes(node, trunkYMm),
  teeSquare([node.xMm, trunkYMm], {
    about: [...(node.tee === undefined ? [] : [node.tee]), ...(node.mark?.about ?? [])],
  }),
  ...(node.mark === undefined ? [] : [balloonShapes(node, node.mark, trunkYMm)]),
];

const feedShapes = (placed: PlacedStrip, node: PlacedNode, drawing: StripDrawing): Shape[] => {
  const { bus } = placed.strip;
  const y = drawing.trunkYMm;
  const topMm = y - dropMm - 1;
  const about = [`feed:${bus.id}`, bus.id];
  const fuseA = fuseOf(drawing.boat, bus.id);
  const lines = [
    ...(bus.supplyV === undefined ? [] : [`${bus.supplyV.toFixed(1)} V`]),
    ...(fuseA === undefined ? [] : [`${fuseA} A`]),
  ];
  const line: Point[] = [
    [node.xMm, topMm],
    [node.xMm, y - 1.6],
  ];
  const head: Point[] = [
    [node.xMm, y - 1.3],
    [node.xMm - 0.9, y - 3.5],
    [node.xMm + 0.9, y - 3.5],
  ];
  return [
    pathShape(polyline(line), { stroke: { ink: 'power', widthMm: 0.6, dashMm: [...lineCode.feed.dashMm] }, about }),
    pathShape(polygon(head), { fill: 'power', about }),
    teeSquare([node.xMm, y], { about }),
    ...lines.map((text, order) =>
      figures(text, [node.xMm, topMm - 1 - (lines.length - 1 - order) * stripLineMm], {
        anchor: 'middle',
        ink: 'power',
        about,
      }),
    ),
  ];
};

const spareShapes = (node: PlacedNode, y: number): Shape[] => {
  const sign = node.up ? -1 : 1;
  const about = node.tee === undefined ? [] : [node.tee];
  return [
    pathShape(
      polyline([
        [node.xMm, y],
        [node.xMm, y + sign * 3.6],
      ]),
      { stroke: { ink: 'quiet', widthMm: 0.3 }, about },
    ),
    teeSquare([node.xMm, y], { about }),
    ...node.words.map(
      (text): Shape => ({
        kind: 'text',
        xMm: node.xMm,
        yMm: y + (node.up ? -5 : 7),
        text,
        ...stripWords,
        anchor: 'middle',
        ink: 'quiet',
        about,
      }),
    ),
  ];
};

/** The terminator is written on the side where the next drop does not hang. */
const endShapes = (placed: PlacedStrip, node: PlacedNode, trunkYMm: number): Shape[] => {
  const beside = placed.nodes[0] === node ? placed.nodes[1] : placed.nodes.at(-2);
  const about = [placed.strip.bus.id, node.place];
  const yMm = beside?.up === true ? trunkYMm + 5.2 : trunkYMm - 2.6;
  const first = placed.nodes[0] === node;
  return [
    ...endSquare([node.xMm, trunkYMm], { about }),
    figures('120 Ω', [node.xMm + (first ? 1.2 : -1.2), yMm], { anchor: first ? 'end' : 'start', ink: 'quiet', about }),
  ];
};

const nodeShapes = (placed: PlacedStrip, node: PlacedNode, drawing: StripDrawing): Shape[] => {
  switch (node.kind) {
    case 'device':
      return deviceShapes(node, drawing.trunkYMm);
    case 'feed':
      return feedShapes(placed, node, drawing);
    case 'spare':
      return spareShapes(node, drawing.trunkYMm);
    case 'end':
      return endShapes(placed, node, drawing.trunkYMm);
  }
};

/** One bus as a strip: the trunk straight, tees and ends on it, drops to alternate sides with their lengths. */
export const stripShapes = ({
  placed,
  boat,
  trunkYMm,
}: {
  placed: PlacedStrip;
  boat: Boat;
  trunkYMm: number;
}): Shape => {
  const { strip, nodes } = placed;
  const words = strip.order === 'axis' ? 'in the order of the boat' : 'in the order of the trunk';
  return {
    kind: 'group',
    label: `bus ${strip.bus.id} as a strip, ${words}`,
    shapes: [
      ...trunkShapes(placed, trunkYMm),
      ...nodes.flatMap((node) => nodeShapes(placed, node, { trunkYMm, boat })),
    ],
  };
};
