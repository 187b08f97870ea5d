import type { LineEntry } from '../../core/plan-shape.ts';
import { printLength } from '../../core/units/print-length.ts';
import { codeOf } from '../sheet/line-code.ts';

const lengthWords = ({ lengthM, longestM, guessed }: LineEntry): string => {
  const length = printLength({ valueM: lengthM, as: 'metres' });
  return guessed ? `about ${length}, at most ${printLength({ valueM: longestM, as: 'metres' })}` : length;
};

/** A line by its kind and label: "drop C07". */
export const lineName = ({ kind, label }: LineEntry): string =>
  label === undefined ? codeOf(kind).words : `${codeOf(kind).words} ${label}`;

/**
 * A line with its length, and the cable aboard that makes it where one does.
 *
 * @example lineWords(drop) // 'drop C07, 1.75 m'
 */
export const lineWords = (line: LineEntry): string =>
  [
    lineName(line),
    lengthWords(line),
    ...(line.kept === undefined ? [] : [`the cable aboard, ${line.kept.join(' and ')}`]),
  ].join(', ');
