import { printMoney } from '../lists/order-words.ts';
import { printCount } from '../lists/print-figure.ts';
import type { BoatSummary } from './boat-summary.ts';

/** One of many boats, as its row in the table has it. */
export interface ManyBoatsRow {
  /** the boat file, as the person knows it */
  readonly file: string;
  /** absent where the boat could not be read or planned */
  readonly summary?: BoatSummary;
  /** absent where nobody asked for times */
  readonly seconds?: number;
}

/** A column: its head, and what it shows of a boat that was planned. */
interface Column {
  readonly head: string;
  readonly cell: (summary: BoatSummary, row: ManyBoatsRow) => string;
}

const width = 80;
const leastNameWidth = 16;

const count = (value: number): string => (value === 0 ? '-' : String(value));

const levelColumns: readonly Column[] = [
  { head: 'danger', cell: ({ open }) => count(open.danger) },
  { head: 'fault', cell: ({ open }) => count(open.fault) },
  { head: 'doubt', cell: ({ open }) => count(open.doubt) },
  { head: 'advice', cell: ({ open }) => count(open.advice) },
];

const checkColumns: readonly Column[] = [
  ...levelColumns,
  { head: 'accepted', cell: ({ accepted }) => count(accepted) },
];

const hours = ({ least, most }: BoatSummary['hoursH']): string =>
  Math.round(least) === Math.round(most) ? String(Math.round(least)) : `${Math.round(least)}-${Math.round(most)}`;

const planColumns: readonly Column[] = [
  ...levelColumns,
  { head: 'arrive', cell: ({ readings }) => `${readings.arrive}/${readings.wanted}` },
  { head: 'parts', cell: ({ parts }) => `${printMoney(parts.cost)} ${parts.currency}` },
  { head: 'hours', cell: ({ hoursH }) => hours(hoursH) },
];

const timeColumn: Column = { head: 'seconds', cell: (_, { seconds = 0 }) => seconds.toFixed(1) };

/** The end of a path says more than its beginning. */
const shortened = (name: string, most: number): string =>
  name.length <= most ? name : `…${name.slice(name.length - most + 1)}`;

const shownName = (file: string): string => file.replace(/\.boat\.json$/, '');

const tableLines = (rows: readonly ManyBoatsRow[], columns: readonly Column[]): string[] => {
  const cells = rows.map((row) => columns.map(({ cell }) => (row.summary ? cell(row.summary, row) : '')));
  const widths = columns.map(({ head }, at) => Math.max(head.length, ...cells.map((line) => line[at]?.length ?? 0)));
  const taken = widths.reduce((sum, one) => sum + one + 2, 0);
  const longest = Math.max('boat'.length, ...rows.map(({ file }) => shownName(file).length));
  const nameWidth = Math.min(longest, Math.max(leastNameWidth, width - taken));
  const line = (name: string, figures: readonly string[]): string =>
    [
      shortened(name, nameWidth).padEnd(nameWidth),
      ...figures.map((figure, at) => figure.padStart(widths[at] ?? 0)),
    ].join('  ');
  return [
    line(
      'boat',
      columns.map(({ head }) => head),
    ),
    ...rows.map((row, at) =>
      row.summary === undefined
        ? `${shortened(shownName(row.file), nameWidth).padEnd(nameWidth)}  not read`
        : line(shownName(row.file), cells[at] ?? []),
    ),
  ];
};

const wantMending = ({ summary }: ManyBoatsRow): boolean =>
  summary !== undefined && summary.open.danger + summary.open.fault > 0;

/** How many boats there are, and how many of them want something done. */
const lastLine = (rows: readonly ManyBoatsRow[]): string => {
  const [bad, unread] = [rows.filter(wantMending).length, rows.filter(({ summary }) => summary === undefined).length];
  const parts = [
    bad === 0 ? 'none with a danger or a fault' : `${bad} with a danger or a fault`,
    ...(unread === 0 ? [] : [`${unread} not read`]),
  ];
  return `${printCount(rows.length, 'boat')}: ${parts.join(', ')}.`;
};

/** Many boats as a table of 80 columns, one a line, for `check` or for `plan`, with the sums of it below. */
export const manyBoatsText = (of: 'check' | 'plan', rows: readonly ManyBoatsRow[]): string => {
  const isTimed = rows.some(({ seconds }) => seconds !== undefined);
  const columns = [...(of === 'check' ? checkColumns : planColumns), ...(isTimed ? [timeColumn] : [])];
  return `${[...tableLines(rows, columns), '', lastLine(rows)].join('\n')}\n`;
};
