import { textWidthMm } from '../drawing/text-width.ts';
import { wrapText } from '../drawing/wrap-text.ts';
import type { PowerNode } from './power-node.ts';
import { symbolMm } from './power-symbols.ts';

/** Type of the drawing: 11 px on screen at least. */
export const wordsStyle = { sizeMm: 2.95, face: 'words' } as const;
export const nameStyle = { ...wordsStyle, weight: 'semibold' } as const;
export const lineMm = 3.9;

/** A node as a row of the drawing: how deep it hangs, and on which bars. */
export interface OneLineRow {
  readonly node: PowerNode;
  readonly depth: number;
  /** keys of the bars above it, outermost first; the last is the one it hangs on */
  readonly bars: readonly PowerNode[];
}

/** The tree as rows, each head before what hangs on it. */
export const rowsOf = (nodes: readonly PowerNode[], bars: readonly PowerNode[] = []): OneLineRow[] =>
  nodes.flatMap((node) => [{ node, depth: bars.length, bars }, ...rowsOf(node.children, [...bars, node])]);

/** Where everything stands across one column of the drawing, millimetres from its left edge. */
export interface OneLineAcross {
  readonly widthMm: number;
  readonly barsMm: readonly number[];
  /** guard and wire of every line; what it feeds */
  readonly labelMm: number;
  readonly labelWidthMm: number;
  readonly endMm: number;
  readonly wordsMm: number;
  readonly wordsWidthMm: number;
  /** too narrow for two columns of words: they stand under each line, and bars follow each other closely */
  readonly isNarrow: boolean;
}

/** Room for the words beside the ends without which they stand under the line. */
const leastWordsMm = 52;
const narrowIndentMm = 5;

/** From a bar to the first symbol that hangs on it. */
export const leadMm = 3;

/** Room for a balloon after the symbol at the end of a line. */
export const balloonMm = 7;

const widest = (values: readonly number[]): number => Math.max(0, ...values);

/** Whether a bar goes down from it. */
export const isHead = ({ end }: Pick<PowerNode, 'end'>): boolean => end === 'bar' || end === 'joint';

/** Bars far enough apart for the symbols of the heads between them. */
const barsOf = (rows: readonly OneLineRow[]): number[] => {
  const heads = rows.filter(({ node }) => isHead(node));
  const deepest = widest(rows.map(({ depth, node }) => depth + (isHead(node) ? 1 : 0)));
  const barsMm: number[] = [];
  for (let depth = 0; depth < deepest; depth++) {
    const symbols = widest(heads.filter((row) => row.depth === depth).map(({ node }) => node.symbols.length));
    barsMm.push((barsMm.at(-1) ?? 0) + leadMm + symbolMm * symbols);
  }
  return barsMm;
};

const narrowAcross = (deepest: number, widthMm: number): OneLineAcross => ({
  widthMm,
  barsMm: Array.from({ length: deepest }, (_, depth) => 1 + narrowIndentMm * depth),
  labelMm: 0,
  labelWidthMm: 0,
  endMm: widthMm - symbolMm - balloonMm,
  wordsMm: 0,
  wordsWidthMm: 0,
  isNarrow: true,
});

/** Measures a column of this width for the rows it is to hold. */
export const acrossOf = (rows: readonly OneLineRow[], widthMm: number): OneLineAcross => {
  const barsMm = barsOf(rows);
  const lines = rows.filter(({ node }) => !isHead(node) && node.end !== 'nothing');
  const labelMm = widest([
    ...lines.map(({ depth, node }) => (barsMm[depth - 1] ?? 0) + leadMm + symbolMm * node.symbols.length),
    ...barsMm.map((barMm) => barMm + leadMm),
  ]);
  const labelWidthMm = widest(
    lines.flatMap(({ node }) => [node.guard, node.wire].map((words) => textWidthMm(words, wordsStyle))),
  );
  const endMm = labelMm + labelWidthMm + 2;
  const wordsMm = endMm + symbolMm + balloonMm;
  const wordsWidthMm = widthMm - wordsMm;
  return wordsWidthMm < leastWordsMm
    ? narrowAcross(barsMm.length, widthMm)
    : { widthMm, barsMm, labelMm, labelWidthMm, endMm, wordsMm, wordsWidthMm, isNarrow: false };
};

/** A line of words: a name, or what stands over or under a line. */
export interface RowLine {
  readonly words: string;
  readonly look: 'name' | 'plain' | 'quiet';
}

/** Words in lines of a width; a word that is wider alone is cut, with a sign that it was. */
const wrapped = (words: string, widthMm: number, look: RowLine['look']): RowLine[] => {
  if (words === '') return [];
  const style = look === 'name' ? nameStyle : wordsStyle;
  const cut = (word: string): string => {
    if (textWidthMm(word, style) <= widthMm) return word;
    let kept = word;
    while (kept.length > 1 && textWidthMm(`${kept}…`, style) > widthMm) kept = kept.slice(0, -1);
    return `${kept}…`;
  };
  const lines = wrapText(words, style, widthMm) ?? wrapText(words.split(' ').map(cut).join(' '), style, widthMm);
  return (lines ?? []).map((line) => ({ words: line, look }));
};

/** Lines over and under the line of a row, at one place across. */
export interface RowText {
  readonly xMm: number;
  readonly over: readonly RowLine[];
  readonly under: readonly RowLine[];
}

/** A row with its texts placed, as high as it needs to be. */
export interface SetRow extends OneLineRow {
  readonly texts: readonly RowText[];
  readonly overMm: number;
  /** from the line to the first words under it */
  readonly underFromMm: number;
  readonly heightMm: number;
  /** the bar it hangs on; for a source, the left edge */
  readonly fromMm: number;
}

/** A head, or what no line leads to, has its words beside its symbols. */
const besideText = ({ node, depth }: OneLineRow, { barsMm, widthMm }: OneLineAcross): RowText => {
  const afterMm = node.end === 'nothing' ? symbolMm * Math.max(1, node.symbols.length) : (barsMm[depth] ?? 0);
  const xMm = afterMm + leadMm;
  return {
    xMm,
    over: wrapped(node.name, widthMm - xMm, 'name'),
    under: node.facts.flatMap((fact) => wrapped(fact, widthMm - xMm, 'quiet')),
  };
};

const lineTexts = ({ node }: OneLineRow, across: OneLineAcross): RowText[] => [
  {
    xMm: across.labelMm,
    over: wrapped(node.guard, across.labelWidthMm + 0.1, 'plain'),
    under: wrapped(node.wire, across.labelWidthMm + 0.1, 'quiet'),
  },
  {
    xMm: across.wordsMm,
    over: wrapped(node.name, across.wordsWidthMm, 'name'),
    under: node.facts.flatMap((fact) => wrapped(fact, across.wordsWidthMm, 'quiet')),
  },
];

/** On a narrow sheet everything stands under the line. */
const narrowText = ({ node, depth }: OneLineRow, { barsMm, widthMm }: OneLineAcross): RowText => {
  const xMm = (isHead(node) ? (barsMm[depth] ?? 0) : (barsMm[depth - 1] ?? -leadMm)) + leadMm;
  const isLine = !isHead(node) && node.end !== 'nothing';
  const run = !isLine ? '' : [node.guard, node.wire].filter((words) => words !== '').join(', ');
  const free = widthMm - xMm;
  return {
    xMm,
    over: [],
    under: [
      ...wrapped(node.name, free, 'name'),
      ...wrapped(run, free, 'plain'),
      ...node.facts.flatMap((fact) => wrapped(fact, free, 'quiet')),
    ],
  };
};

const leastOverMm = 4.6;
const leastUnderMm = 4.9;
const underMm = 3.6;
/** Half a symbol, and on a narrow sheet the line that leads back to the bar under a head. */
const clearMm = { symbol: 3, back: 3.6 };

const setRow = (row: OneLineRow, across: OneLineAcross): SetRow => {
  const fromMm = across.barsMm[row.depth - 1] ?? 0;
  if (across.isNarrow) {
    const text = narrowText(row, across);
    const underFromMm = underMm + (isHead(row.node) ? clearMm.back : clearMm.symbol - 0.6);
    const heightMm = leastOverMm + underFromMm + text.under.length * lineMm - 1;
    return { ...row, texts: [text], overMm: leastOverMm, underFromMm, heightMm, fromMm };
  }
  const texts = isHead(row.node) || row.node.end === 'nothing' ? [besideText(row, across)] : lineTexts(row, across);
  const overMm = Math.max(leastOverMm, 1.4 + lineMm * widest(texts.map(({ over }) => over.length)));
  const belowMm = Math.max(leastUnderMm, 1.6 + lineMm * widest(texts.map(({ under }) => under.length)));
  return { ...row, texts, overMm, underFromMm: underMm, heightMm: overMm + belowMm, fromMm };
};

/** Sets every row: its texts, and its height by the most lines over and under the line. */
export const setRows = (rows: readonly OneLineRow[], across: OneLineAcross): SetRow[] =>
  rows.map((row) => setRow(row, across));

/** Rows that stand under each other in one column, and the bars that come down from the column before. */
export interface OneLineColumn {
  readonly rows: readonly SetRow[];
  readonly goesOn: readonly PowerNode[];
  /** those of them on which something hangs that has not come yet */
  readonly through: ReadonlySet<PowerNode>;
}

/** Room at the head of a column that goes on. */
export const goesOnMm = 6;

/** The heads at the end of a column that the next row hangs on: they go over with it. */
const headsOver = (open: readonly SetRow[], next: SetRow): number => {
  let count = 0;
  let below = next;
  for (let at = open.length - 1; at > 0; at--) {
    const row = open[at];
    if (row === undefined || row.node !== below.bars.at(-1)) break;
    below = row;
    count += 1;
  }
  return count;
};

/** Fills columns of a height; a head is never the last of one, and bars that are not done go on in the next. */
export const columnsOf = (rows: readonly SetRow[], heightMm: number): OneLineColumn[] => {
  const columns: SetRow[][] = [];
  let open: SetRow[] = [];
  const usedMm = (): number =>
    open.reduce((sum, row) => sum + row.heightMm, (open[0]?.bars.length ?? 0) === 0 ? 0 : goesOnMm);
  for (const row of rows) {
    if (open.length > 0 && usedMm() + row.heightMm > heightMm) {
      const over = open.splice(open.length - headsOver(open, row));
      columns.push(open);
      open = over;
    }
    open.push(row);
  }
  if (open.length > 0) columns.push(open);
  const seen = new Set<PowerNode>();
  return columns.map((column) => {
    const goesOn = column[0]?.bars ?? [];
    const through = new Set(goesOn.filter(({ children }) => children.some((child) => !seen.has(child))));
    for (const { node } of column) seen.add(node);
    return { rows: column, goesOn, through };
  });
};
