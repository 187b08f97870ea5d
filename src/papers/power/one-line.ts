import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { cardBoat } from '../cards/card-boat.ts';
import type { Drawing, Shape } from '../drawing/shapes.ts';
import { inUnits } from '../lists/in-units.ts';
import { inWireUnits } from '../lists/in-wire-units.ts';
import { unitMarks } from '../sheet/unit-marks.ts';
import { columnShapes, type UnitNumber } from './one-line-column.ts';
import { oneLineKey } from './one-line-key.ts';
import { acrossOf, columnsOf, type OneLineColumn, rowsOf, setRows } from './one-line-rows.ts';
import type { PowerNode } from './power-node.ts';
import { powerTree } from './power-tree.ts';

interface Request {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly widthMm: number;
  /** of one page; absent for one sheet as high as it needs to be */
  readonly heightMm?: number;
  /** metres with mm², or feet with gauges; absent for metres with both sizes of each wire */
  readonly units?: 'metres' | 'feet' | undefined;
  /** it stands in a frame that has its title and its border */
  readonly isFramed?: boolean;
}

const sheetEdgeMm = 5;
const titleMm = 8;

/** A column narrower than this is hard to read; wider than twice this a page holds two. */
const columnMm = 188;
const betweenMm = 8;

const said = (node: PowerNode, say: (words: string) => string): PowerNode => ({
  ...node,
  wire: say(node.wire),
  facts: node.facts.map(say),
  children: node.children.map((child) => said(child, say)),
});

const numbersOf = (boat: Boat, plan: Plan): ReadonlyMap<string, UnitNumber> =>
  new Map(
    unitMarks({ boat, index: cardBoat(boat), plan }).map(({ number, kit, findings }) => [
      kit.id,
      { number, filled: findings.length > 0 },
    ]),
  );

const titleShape = (words: string): Shape => ({
  kind: 'text',
  xMm: sheetEdgeMm,
  yMm: sheetEdgeMm + 2,
  text: words,
  sizeMm: 3.4,
  face: 'words',
  weight: 'semibold',
  ink: 'ink',
});

const nothingYet: PowerNode = {
  key: 'nothing',
  about: [],
  symbols: ['battery'],
  guard: '',
  wire: '',
  guessed: false,
  end: 'nothing',
  name: 'No battery bank is entered yet',
  facts: ['Enter the banks, the panels and their circuits: then everything that draws is drawn here.'],
  isOpen: true,
  children: [],
};

/** Columns shared out over pages, as many on each as go side by side. */
const pagesOf = (columns: readonly OneLineColumn[], across: number): OneLineColumn[][] =>
  Array.from({ length: Math.max(1, Math.ceil(columns.length / across)) }, (_, page) =>
    columns.slice(page * across, (page + 1) * across),
  );

/**
 * The direct current of the whole boat on one line, plus and minus together: banks, what guards them, feeders, panels,
 * circuits with their ratings, feeds with size and length, and what hangs at their ends with the volts that arrive. Symbols
 * in the forms of the open standard, each with its words. One tall sheet, or pages of `heightMm`.
 */
export const oneLine = (request: Request): Drawing[] => {
  const { boat, plan, widthMm, heightMm, isFramed = false } = request;
  const edgeMm = isFramed ? 1 : sheetEdgeMm;
  const made = powerTree(cardBoat(boat), plan);
  const metres = made.length === 0 ? [nothingYet] : made;
  const { units } = request;
  const nodes =
    units === undefined
      ? metres
      : metres.map((node) => said(node, (words) => inUnits(inWireUnits(words, units), units)));
  const rows = rowsOf(nodes);
  const isPaged = heightMm !== undefined;
  const freeMm = widthMm - 2 * edgeMm;
  const count = isPaged ? Math.max(1, Math.floor((freeMm + betweenMm) / (columnMm + betweenMm))) : 1;
  const ownMm = (freeMm - betweenMm * (count - 1)) / count;
  const across = acrossOf(rows, ownMm);
  const numbers = numbersOf(boat, plan);
  const hasFilled = [...numbers.values()].some(({ filled }) => filled);
  // on paper nobody can ask what a filled number is
  const more = isFramed && hasFilled ? ' A filled number has a finding that is still open.' : '';
  const key = oneLineKey(nodes, { leftMm: edgeMm, topMm: 0, widthMm: freeMm, more });
  const topMm = edgeMm + (isFramed ? 0 : titleMm);
  const roomMm = isPaged ? heightMm - topMm - key.heightMm - edgeMm - 2 : Number.POSITIVE_INFINITY;
  const pages = pagesOf(columnsOf(setRows(rows, across), roomMm), count);
  return pages.map((columns, page) => {
    const drawn = columns.map((column, at) =>
      columnShapes(column, { across, at: [edgeMm + at * (ownMm + betweenMm), topMm], numbers }),
    );
    const bottomMm = isPaged ? topMm + roomMm : Math.max(topMm, ...drawn.map((column) => column.bottomMm));
    const foot = oneLineKey(nodes, { leftMm: edgeMm, topMm: bottomMm + 2, widthMm: freeMm, more });
    const title = `${boat.name}: power on one line${pages.length === 1 ? '' : `, page ${page + 1} of ${pages.length}`}`;
    return {
      title,
      widthMm,
      heightMm: heightMm ?? bottomMm + 2 + foot.heightMm + edgeMm,
      shapes: [
        ...(isFramed ? [] : [titleShape(title)]),
        ...drawn.flatMap(({ shapes }) => shapes),
        { kind: 'group', label: 'key of the symbols', shapes: foot.shapes },
      ],
    };
  });
};
