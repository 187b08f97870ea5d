import { pathShape } from '../../drawing/marks.ts';
import { polyline } from '../../drawing/polyline.ts';
import type { Shape } from '../../drawing/shapes.ts';
import { labelsText } from '../../lists/labels-text.ts';
import { printCount } from '../../lists/print-figure.ts';
import { type KnownBoat, labelOf } from '../known-boat.ts';
import { type FlowPart, textFlow } from '../text-flow.ts';
import { byWayId } from './by-way-id.ts';
import type { WindowView } from './window-view.ts';

/** Room beside a match line in which the lines that cross it are named. */
export const matchColumnMm = 34;

const stroke = { ink: 'ink', widthMm: 0.4, dashMm: [6, 1.2, 1, 1.2] } as const;

/** Ways that lead over a match line, with their lines, as they stand on both sides of it. */
const crossingWays = (known: KnownBoat, atM: number): FlowPart[] =>
  [...known.index.ways.values()]
    .sort((a, b) => byWayId(a.id, b.id))
    .filter(({ id, ends }) => {
      const xs = ends.map((end) => known.index.places.get(end)?.xM ?? atM);
      return (known.linesIn.get(id) ?? []).length > 0 && Math.min(...xs) < atM && Math.max(...xs) > atM;
    })
    .map(({ id }) => {
      const lines = known.linesIn.get(id) ?? [];
      return {
        look: 'plain',
        text: `${id}, ${printCount(lines.length, 'line')}: ${labelsText(lines.map((line) => labelOf(known, line.id)))}`,
        about: [id, ...lines.map((line) => line.id)],
      };
    });

/** A match line with the lines that cross it in the column beside it. */
const matchSide = (
  known: KnownBoat,
  {
    xMm,
    atM,
    sheet,
    side,
    topMm,
    bottomMm,
  }: {
    xMm: number;
    atM: number;
    sheet: number;
    side: 'stern' | 'bow';
    topMm: number;
    bottomMm: number;
  },
): Shape[] => {
  const leftMm = side === 'stern' ? xMm - matchColumnMm : xMm + 2;
  const parts: FlowPart[] = [
    { look: 'name', text: `match line, ${side === 'stern' ? 'aft' : 'forward'} of it: sheet ${sheet}` },
    { look: 'quiet', text: 'Over it go:' },
    ...crossingWays(known, atM),
  ];
  const [words = []] = textFlow(parts, {
    leftMm,
    topMm,
    widthMm: matchColumnMm - 2,
    heightMm: bottomMm - topMm,
    columns: 1,
  });
  return [
    pathShape(
      polyline([
        [xMm, topMm],
        [xMm, bottomMm],
      ]),
      { stroke },
    ),
    ...words,
  ];
};

/** The match lines of a window; `sheets`: the sheets of the windows aft and forward of it. */
export const matchColumns = (
  known: KnownBoat,
  view: WindowView,
  sheets: { readonly aft: number; readonly forward: number },
): Shape[] => {
  const { span, sternMatchMm, bowMatchMm } = view;
  const { topMm, bottomMm } = view.box;
  return [
    ...(sternMatchMm === undefined
      ? []
      : matchSide(known, { xMm: sternMatchMm, atM: span.fromM, sheet: sheets.aft, side: 'stern', topMm, bottomMm })),
    ...(bowMatchMm === undefined
      ? []
      : matchSide(known, { xMm: bowMatchMm, atM: span.toM, sheet: sheets.forward, side: 'bow', topMm, bottomMm })),
  ];
};
