import { type Figure, keeps, short, timesOf } from '../figure.ts';
import { benches } from './benches.ts';

/** The figures of one bench, with the machine they were measured on. */
interface BenchResult {
  readonly cores: number;
  readonly node: string;
  /** what the person who ran it says of the machine and the day */
  readonly note?: string;
  readonly figures: readonly Figure[];
}

export type Results = Readonly<Record<string, BenchResult>>;

const yesNo = (kept: boolean | undefined): string => (kept === undefined ? '' : kept ? 'yes' : '**no**');

const row = (figure: Figure): string => {
  const { what, value, unit, limit, stretch, more, beside = [], note } = figure;
  const bound = (of: number | undefined): string =>
    of === undefined ? '' : `${more === true ? '≥' : '≤'} ${short(of)} ${unit}, ${yesNo(keeps(figure, of))}`;
  const others = beside.map(({ name, value: other }) => `${name}: ${short(other)} ${unit} (${timesOf(figure, other)})`);
  const besides = [...others, ...(note === undefined ? [] : [note])].join('; ');
  const share = limit === undefined ? '' : `${(value / limit).toFixed(2)}`;
  return `| ${[what, `${short(value)} ${unit}`, share, bound(limit), bound(stretch), besides].join(' | ')} |`;
};

const section = (title: string, { cores, node, note, figures }: BenchResult): string[] => [
  `## ${title}`,
  '',
  `${cores} cores, Node ${node}${note === undefined ? '' : `, ${note}`}.`,
  '',
  '| what | figure | of the limit | limit, kept | stretch, kept | beside it in the same run |',
  '| --- | --- | --- | --- | --- | --- |',
  ...figures.map(row),
  '',
];

/** The page of all figures that were measured, bench by bench, as a text that hangs on nothing but them. */
export const resultsPage = (results: Results): string =>
  [
    '# Figures',
    '',
    'Written by `npm run bench`, which runs every bench one after the other; `npm run bench -- plan logs` runs some and leaves the others as they were. A time inside the program is the time its thread was given by the machine; a time of the app or of a command is by the clock on the wall, and longer where the machine has other work. “Times” says how often what stands beside takes as long, or does as much.',
    '',
    ...benches.flatMap(({ id, title }) => {
      const result = results[id];
      return result === undefined ? [] : section(title, result);
    }),
  ].join('\n');
