import type { Boat } from '../../core/boat/boat-schema.ts';
import { balloon, endSquare, pathShape, teeSquare } from '../drawing/marks.ts';
import type { Point } from '../drawing/point.ts';
import { polygon } from '../drawing/polyline.ts';
import type { Shape, TextShape } from '../drawing/shapes.ts';
import { wrapText } from '../drawing/wrap-text.ts';
import { codedStrokes } from './coded-strokes.ts';
import { type CurveKind, curveHeads } from './curve-kinds.ts';
import { fuseOf } from './fuse-of.ts';
import { lineCode } from './line-code.ts';
import { figureIn, type SheetUnits } from './sheet-units.ts';
import { dropMm, radiusMm, stretchText } from './strip-layout.ts';
import type { StripNode, StripOfBus } from './strip-nodes.ts';
import { stripFigures, stripLineMm, stripWords } from './strip-words.ts';
import { trunkPieces } from './trunk-pieces.ts';

/** Heights of the rows: a tee or an end, the name of a place. */
const rowMm = 7.6;
const placeMm = 5.4;
const headMm = 5;

const trunkXMm = 14;
const edgeMm = 3;

interface PlacedRow {
  readonly node: StripNode;
  readonly yMm: number;
  /** the name of the place stands over the first node of a stop */
  readonly placeYMm?: number;
}

const rowsOf = (strip: StripOfBus, topMm: number): { rows: PlacedRow[]; bottomMm: number } => {
  let yMm = topMm + headMm;
  const rows = strip.nodes.map((node, at): PlacedRow => {
    const opens = at === 0 || strip.nodes[at - 1]?.stop !== node.stop;
    const placeYMm = opens ? yMm + placeMm - 1 : undefined;
    yMm += opens ? placeMm : 0;
    const middle = yMm + rowMm / 2;
    yMm += rowMm;
    return { node, yMm: middle, ...(placeYMm === undefined ? {} : { placeYMm }) };
  });
  return { rows, bottomMm: yMm };
};

/** Height of an upright strip. */
export const uprightStripMm = (strip: StripOfBus): number => rowsOf(strip, 0).bottomMm + 2;

const figures = (text: string, at: Point, look: Pick<TextShape, 'anchor' | 'ink' | 'about'>): TextShape => ({
  kind: 'text',
  xMm: at[0],
  yMm: at[1] + 1,
  text,
  ...stripFigures,
  ...look,
});

const words = (text: string, at: Point, look: Pick<TextShape, 'anchor' | 'ink' | 'about'>): TextShape => ({
  kind: 'text',
  xMm: at[0],
  yMm: at[1] + 1,
  text,
  ...stripWords,
  ...look,
});

interface Column {
  readonly widthMm: number;
  readonly curve: CurveKind;
}

const trunk = (strip: StripOfBus, rows: readonly PlacedRow[], { widthMm, curve }: Column): Shape[] =>
  trunkPieces(strip).flatMap(({ from, about, guessed, stretch }): Shape[] => {
    const [fromMm, toMm] = [rows[from]?.yMm ?? 0, rows[from + 1]?.yMm ?? 0];
    const line: Point[] = [
      [trunkXMm, fromMm],
      [trunkXMm, toMm],
    ];
    const strokes = codedStrokes(line, { code: lineCode.trunk, guessed, about });
    if (stretch === undefined) return strokes;
    const beside: Point = [trunkXMm - 1.8, (fromMm + toMm) / 2];
    return [
      ...strokes,
      figures(stretchText({ lengthM: stretch.lengthM }, strip.units), beside, { anchor: 'end', ink: 'quiet', about }),
      ...(curve !== 'load' || stretch.carriesLen === undefined
        ? []
        : [
            figures(`${stretch.carriesLen} LEN`, [widthMm - edgeMm, beside[1]], { anchor: 'end', ink: 'quiet', about }),
          ]),
    ];
  });

const balloonXMm = trunkXMm + dropMm + radiusMm;
const wordsXMm = balloonXMm + radiusMm + 1.3;

const valueAt = (node: StripNode, curve: CurveKind): number | undefined =>
  curve === 'volts' ? node.lowestV : curve === 'lost volts' ? node.dropV : undefined;

const device = ({ node, yMm }: PlacedRow, { widthMm, curve, units }: Column & { units: SheetUnits }): Shape[] => {
  const value = valueAt(node, curve);
  const about = [...(node.tee === undefined ? [] : [node.tee]), ...(node.mark?.about ?? [])];
  const drop = node.drop === undefined ? [] : [node.drop.id];
  const line: Point[] = [
    [trunkXMm, yMm],
    [trunkXMm + dropMm, yMm],
  ];
  const { mark } = node;
  const lines = mark === undefined ? undefined : wrapText(mark.label, stripWords, widthMm - edgeMm - 12 - wordsXMm);
  return [
    ...codedStrokes(line, { code: lineCode.drop, guessed: node.drop?.guessed ?? false, about: drop }),
    teeSquare([trunkXMm, yMm], { about }),
    ...(node.drop === undefined
      ? []
      : [
          figures(figureIn(units, node.drop.lengthM), [trunkXMm + dropMm / 2 + 0.6, yMm - 2.6], {
            anchor: 'middle',
            ink: 'quiet',
            about: drop,
          }),
        ]),
    ...(mark === undefined
      ? []
      : [
          {
            kind: 'group' as const,
            label: `${mark.number}, ${mark.kit.name}`,
            focusable: true,
            about: mark.about,
            shapes: [
              ...balloon([balloonXMm, yMm], {
                number: mark.number,
                radiusMm,
                filled: mark.findings.length > 0,
                about: mark.about,
              }),
              ...(lines ?? []).slice(0, 2).map((text, order) => {
                const shift = (order - (Math.min(lines?.length ?? 1, 2) - 1) / 2) * stripLineMm;
                return words(text, [wordsXMm, yMm + shift], { ink: 'ink', about: mark.about });
              }),
            ],
          },
        ]),
    ...(value === undefined
      ? []
      : [figures(value.toFixed(2), [widthMm - edgeMm, yMm], { anchor: 'end', ink: 'quiet', about })]),
  ];
};

const feed = ({ yMm }: PlacedRow, { strip, boat }: { strip: StripOfBus; boat: Boat }): Shape[] => {
  const about = [strip.bus.id];
  const fuseA = fuseOf(boat, strip.bus.id);
  const text = [
    ...(strip.bus.supplyV === undefined ? [] : [`${strip.bus.supplyV.toFixed(1)} V`]),
    ...(fuseA === undefined ? [] : [`${fuseA} A`]),
  ].join(' · ');
  const line: Point[] = [
    [trunkXMm + dropMm, yMm],
    [trunkXMm + 1.6, yMm],
  ];
  const head: Point[] = [
    [trunkXMm + 1.3, yMm],
    [trunkXMm + 3.5, yMm - 0.9],
    [trunkXMm + 3.5, yMm + 0.9],
  ];
  return [
    ...codedStrokes(line, { code: { ...lineCode.feed, widthMm: 0.6 }, guessed: false, about }),
    pathShape(polygon(head), { fill: 'power', about }),
    teeSquare([trunkXMm, yMm], { about }),
    figures(text, [trunkXMm + dropMm + 1.2, yMm], { ink: 'power', about }),
  ];
};

const nodeShapes = (row: PlacedRow, known: Column & { strip: StripOfBus; boat: Boat }): Shape[] => {
  const at: Point = [trunkXMm, row.yMm];
  const about = [known.strip.bus.id, row.node.place];
  switch (row.node.kind) {
    case 'device':
      return device(row, { ...known, units: known.strip.units });
    case 'feed':
      return feed(row, known);
    case 'spare':
      return [teeSquare(at, { about }), words('spare tee', [trunkXMm + 3, row.yMm], { ink: 'quiet', about })];
    case 'end':
      return [...endSquare(at, { about }), figures('120 Ω', [trunkXMm + 3, row.yMm], { ink: 'quiet', about })];
  }
};

/** One bus from top to bottom, for a narrow screen: each tee a row with its unit, its drop and what the curve would tell. */
export const uprightStrip = ({
  strip,
  boat,
  topMm,
  widthMm,
  curve,
}: Column & {
  strip: StripOfBus;
  boat: Boat;
  topMm: number;
}): Shape => {
  const { rows } = rowsOf(strip, topMm);
  const head = words(curveHeads[curve], [widthMm - edgeMm, topMm + 2.4], { anchor: 'end', ink: 'quiet' });
  const places = rows.flatMap((row): Shape[] =>
    row.placeYMm === undefined
      ? []
      : [
          words(row.node.place.replaceAll('-', ' '), [trunkXMm + 3, row.placeYMm - 1], {
            ink: 'quiet',
            about: [row.node.place],
          }),
        ],
  );
  return {
    kind: 'group',
    label: `bus ${strip.bus.id} from top to bottom`,
    shapes: [
      head,
      ...trunk(strip, rows, { widthMm, curve }),
      ...places,
      ...rows.flatMap((row) => nodeShapes(row, { strip, boat, widthMm, curve })),
    ],
  };
};
