import type { LineEntry } from '../../core/plan-shape.ts';
import { printLength } from '../../core/units/print-length.ts';
import { labelOf } from '../lists/label-of.ts';
import { codeOf } from '../sheet/line-code.ts';

/**
 * The length of a line; where it is guessed, how long it may be.
 *
 * @example lineLength({ lengthM: 2.05, longestM: 2.45, guessed: true }) // 'about 2.05 m, at most 2.45 m'
 */
export const lineLength = ({
  lengthM,
  longestM,
  guessed,
}: Pick<LineEntry, 'lengthM' | 'longestM' | 'guessed'>): string => {
  const length = printLength({ valueM: lengthM, as: 'metres' });
  return guessed ? `about ${length}, at most ${printLength({ valueM: longestM, as: 'metres' })}` : length;
};

/** A line by its kind and label: "drop C07". */
export const lineName = (line: LineEntry): string => `${codeOf(line.kind).words} ${labelOf(line)}`.trimEnd();

/**
 * A line with its length, and the cable aboard that makes it where one does.
 *
 * @example lineWords(drop) // 'drop C07, 1.75 m'
 */
export const lineWords = (line: LineEntry): string =>
  [
    lineName(line),
    lineLength(line),
    ...(line.kept === undefined ? [] : [`the cable aboard, ${line.kept.join(' and ')}`]),
  ].join(', ');
