import { appendFileSync } from 'node:fs';

/** One figure with what it is held against: a limit, and what stands beside it in the same run. */
export interface Figure {
  readonly what: string;
  readonly value: number;
  readonly unit: string;
  /** at the most so much, or at the least where `more` */
  readonly limit?: number;
  readonly stretch?: number;
  /** more is better */
  readonly more?: true;
  /** others on the same task, in the same unit */
  readonly beside?: readonly { readonly name: string; readonly value: number }[];
  /** how many, of what; whatever tells a reader what the figure rests on */
  readonly note?: string;
}

/** A number as short as it may be read. */
export const short = (value: number): string => {
  const size = Math.abs(value);
  if (size >= 100 || Number.isInteger(value)) return String(Math.round(value));
  return value.toFixed(size >= 10 ? 1 : size >= 1 ? 2 : 3);
};

/** Whether a figure keeps a bound; undefined where there is none. */
export const keeps = ({ value, more }: Figure, bound: number | undefined): boolean | undefined => {
  if (bound === undefined) return undefined;
  return more === true ? value >= bound : value <= bound;
};

/** How often another’s value goes into the figure’s own, as words: more than one where the figure is the better. */
export const timesOf = ({ value, more }: Figure, other: number): string =>
  `${short(more === true ? value / other : other / value)} times`;

const line = (figure: Figure): string => {
  const { what, value, unit, limit, beside = [], note } = figure;
  const parts = [
    ...(limit === undefined ? [] : [`${(value / limit).toFixed(2)} of ${short(limit)} ${unit}`]),
    ...beside.map(({ name, value: other }) => `${name} ${short(other)} ${unit}: ${timesOf(figure, other)}`),
    ...(note === undefined ? [] : [note]),
  ];
  return `${what.padEnd(62)} ${short(value).padStart(8)} ${unit}   ${parts.join('; ')}`;
};

/** Says a figure, and hands it to the run of all benches where there is one. */
export const tell = (figure: Figure): void => {
  console.log(line(figure));
  const file = process.env.FAIRLEAD_FIGURES;
  if (file !== undefined) appendFileSync(file, `${JSON.stringify(figure)}\n`);
};
