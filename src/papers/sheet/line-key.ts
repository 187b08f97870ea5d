import { converterSquare, endSquare, pathShape, teeSquare } from '../drawing/marks.ts';
import { between, type Point } from '../drawing/point.ts';
import type { Shape, TextShape } from '../drawing/shapes.ts';
import { textWidthMm } from '../drawing/text-width.ts';
import { wavyLine } from '../drawing/wavy-line.ts';
import { codedStrokes } from './coded-strokes.ts';
import { flowRows } from './flow-rows.ts';
import type { LineCode } from './line-code.ts';

const rowMm = 4.2;
const sampleMm = 8;
const gapMm = 1.4;
const edgeMm = 5;
const style = { sizeMm: 2.95, face: 'words' } as const;

/** What is drawn on the sheet and so belongs in its key. */
export interface KeyContents {
  readonly codes: readonly LineCode[];
  readonly guessed: boolean;
  readonly trunk: boolean;
  readonly converters: boolean;
  /** marks of the sheet that are no lines */
  readonly more?: readonly KeyEntry[];
}

/** Words with a sample of what they stand for, drawn in the middle between two points. */
export interface KeyEntry {
  readonly words: string;
  readonly draw: (line: readonly Point[]) => Shape[];
}

const strokes = (code: LineCode, line: readonly Point[]): Shape[] =>
  codedStrokes(line, { code, guessed: false, about: [] });

const middleOf = (from: Point, to: Point): Point => between(from, to, 0.5);

const wave = (line: readonly Point[]): Shape[] => [
  pathShape(wavyLine(line), { stroke: { ink: 'ink', widthMm: 0.32 } }),
];

const lettered = (code: LineCode, line: readonly Point[]): Shape[] => {
  const [from, to] = line;
  if (code.letter === undefined || from === undefined || to === undefined) return strokes(code, line);
  const middle = (from[0] + to[0]) / 2;
  const letter: TextShape = {
    kind: 'text',
    xMm: middle,
    yMm: from[1] + style.sizeMm * 0.34,
    text: code.letter,
    ...style,
    weight: 'semibold',
    anchor: 'middle',
    ink: code.ink,
  };
  return [...strokes(code, [from, [middle - 1.8, from[1]]]), ...strokes(code, [[middle + 1.8, to[1]], to]), letter];
};

/** The two squares of the trunk. */
const squares: readonly KeyEntry[] = [
  { words: 'tee', draw: ([from, to]) => (from && to ? [teeSquare(middleOf(from, to), { about: [] })] : []) },
  { words: 'end of the trunk', draw: ([from, to]) => (from && to ? endSquare(middleOf(from, to), { about: [] }) : []) },
];

const converter: KeyEntry = {
  words: 'converter',
  draw: ([from, to]) => (from && to ? converterSquare(middleOf(from, to), { about: [] }) : []),
};

const entriesOf = ({ codes, guessed, trunk, converters, more = [] }: KeyContents): KeyEntry[] => [
  ...codes.map((code): KeyEntry => ({ words: code.words, draw: (line) => lettered(code, line) })),
  ...(guessed ? [{ words: 'length guessed', draw: wave }] : []),
  ...(trunk ? squares : []),
  ...(converters ? [converter] : []),
  ...more,
];

/** The key of the strokes on this sheet, in as many rows as the width asks for. */
export const lineKey = ({
  contents,
  widthMm,
  topMm,
}: {
  contents: KeyContents;
  widthMm: number;
  topMm: number;
}): { shape: Shape; heightMm: number } => {
  const entries = entriesOf(contents);
  const widths = entries.map((entry) => sampleMm + gapMm + textWidthMm(entry.words, style));
  const spots = flowRows(widths, { fromMm: edgeMm, toMm: widthMm - edgeMm, gapMm: 4 });
  const shapes = entries.flatMap((entry, order): Shape[] => {
    const { xMm, row } = spots[order] ?? { xMm: edgeMm, row: 0 };
    const yMm = topMm + row * rowMm + 2;
    const from: Point = [xMm, yMm];
    const to: Point = [xMm + sampleMm, yMm];
    return [
      ...entry.draw([from, to]),
      { kind: 'text', xMm: to[0] + gapMm, yMm: yMm + 1, text: entry.words, ...style, ink: 'quiet' },
    ];
  });
  const rows = (spots.at(-1)?.row ?? -1) + 1;
  return { shape: { kind: 'group', label: 'key of the lines', shapes }, heightMm: rows * rowMm };
};
