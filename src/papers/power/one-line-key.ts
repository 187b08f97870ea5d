import type { Shape } from '../drawing/shapes.ts';
import { textWidthMm } from '../drawing/text-width.ts';
import { wrapText } from '../drawing/wrap-text.ts';
import { flowRows } from '../sheet/flow-rows.ts';
import { lineMm, wordsStyle } from './one-line-rows.ts';
import { type PowerNode, type PowerSymbol, powerSymbols } from './power-node.ts';
import { powerSymbol, symbolMm, symbolWords } from './power-symbols.ts';

const rowMm = 6.6;
const gapMm = 1.4;

const says =
  'One line stands for the pair, plus and minus. Volts are with the bank at its lowest and everything drawing. A line that wavers has a guessed length. Sizes are a plan, not an approval: check them against the edition in force.';

/** The symbols that a tree has in it. */
const symbolsIn = (nodes: readonly PowerNode[]): Set<PowerSymbol> =>
  new Set(
    nodes.flatMap(({ symbols, end, children }) => [
      ...symbols,
      ...(end === 'load' || end === 'bus' || end === 'converter' ? [end] : []),
      ...symbolsIn(children),
    ]),
  );

/** Every symbol on the drawing with its word, then what the line and the volts mean, and `more` to say. */
export const oneLineKey = (
  nodes: readonly PowerNode[],
  { leftMm, topMm, widthMm, more = '' }: { leftMm: number; topMm: number; widthMm: number; more?: string },
): { shapes: Shape[]; heightMm: number } => {
  const there = symbolsIn(nodes);
  const kinds = powerSymbols.filter((kind) => there.has(kind));
  const widths = kinds.map((kind) => symbolMm + gapMm + textWidthMm(symbolWords[kind], wordsStyle));
  const spots = flowRows(widths, { fromMm: leftMm, toMm: leftMm + widthMm, gapMm: 5 });
  const rows = (spots.at(-1)?.row ?? -1) + 1;
  const lines = wrapText(`${says}${more}`, wordsStyle, widthMm) ?? [];
  const wordsMm = topMm + rows * rowMm;
  return {
    shapes: [
      ...kinds.flatMap((kind, order): Shape[] => {
        const { xMm, row } = spots[order] ?? { xMm: leftMm, row: 0 };
        const yMm = topMm + row * rowMm + 3;
        return [
          ...powerSymbol(kind, [xMm, yMm]),
          {
            kind: 'text',
            xMm: xMm + symbolMm + gapMm,
            yMm: yMm + 1,
            text: symbolWords[kind],
            ...wordsStyle,
            ink: 'quiet',
          },
        ];
      }),
      ...lines.map(
        (words, at): Shape => ({
          kind: 'text',
          xMm: leftMm,
          yMm: wordsMm + 3 + at * lineMm,
          text: words,
          ...wordsStyle,
          ink: 'quiet',
        }),
      ),
    ],
    heightMm: rows * rowMm + lines.length * lineMm + 1,
  };
};
