import type { PathStep } from './path-data.ts';

const stepOf = (text: string): PathStep => {
  const values = text.slice(1).split(' ').map(Number);
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = values;
  switch (text[0]) {
    case 'C':
      return ['C', a, b, c, d, e, f];
    case 'Z':
      return ['Z'];
    case 'L':
      return ['L', a, b];
    default:
      return ['M', a, b];
  }
};

/**
 * The steps of a path, read back from what `pathData` wrote.
 *
 * @example readPath('M0 0L1 0') // [['M', 0, 0], ['L', 1, 0]]
 */
export const readPath = (data: string): PathStep[] => (data.match(/[MLCZ][^MLCZ]*/g) ?? []).map(stepOf);
