import { lineAndColumn } from './json-tokens.ts';
import { scanJson } from './scan-json.ts';
import { shortened } from './shortened.ts';

/** Where something stands in the boat file: names and list positions from the top. */
export type FilePath = readonly (string | number)[];

const isPlainName = /^[A-Za-z][A-Za-z0-9-]*$/;

/**
 * A path as it is written for a person; list positions count from 0, and a name longer than any of a good file is cut.
 *
 * @example placeInFile(['kit', 3, 'ports', 0, 'len']) // 'kit[3].ports[0].len'
 */
export const placeInFile = (path: FilePath): string =>
  path
    .map((step, at) => {
      if (typeof step === 'number') return `[${step}]`;
      if (!isPlainName.test(shortened(step))) return `[${JSON.stringify(shortened(step))}]`;
      return at === 0 ? step : `.${step}`;
    })
    .join('');

/** The line of the value at a path of a JSON text that scanJson accepts; where it is missing, the line of what should hold it. */
export const lineOf = (text: string, wanted: FilePath): number => {
  let deepest = -1;
  let foundAt = 0;
  scanJson(text, (path, at) => {
    if (path.length <= deepest || path.length > wanted.length) return;
    if (!path.every((step, depth) => step === wanted[depth])) return;
    deepest = path.length;
    foundAt = at;
  });
  return lineAndColumn(text, foundAt).line;
};
