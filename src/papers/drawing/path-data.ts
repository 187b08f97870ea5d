/** One step of a path: move, line, cubic curve, close. Any unit. */
export type PathStep =
  | readonly ['M' | 'L', number, number]
  | readonly ['C', number, number, number, number, number, number]
  | readonly ['Z'];

/** A figure as SVG writes it: rounded to 0.01, no needless zeros, never "-0". */
export const figure = (value: number): string => String(Math.round(value * 100) / 100 + 0);

const stepText = (step: PathStep): string => {
  const [letter, ...values] = step;
  return `${letter}${values.map(figure).join(' ')}`;
};

/**
 * SVG path data in millimetres, rounded to 0.01.
 *
 * @example pathData([['M', 0, 0], ['L', 1.004, -0.001]]) // "M0 0L1 0"
 */
export const pathData = (steps: readonly PathStep[]): string => steps.map(stepText).join('');
