import { UserError } from '../../src/core/boat/user-error.ts';
import { type DataPath, valueAt } from './places-in.ts';

const stepsOf = (place: string): (string | number)[] => {
  const steps: (string | number)[] = [];
  const one = /\[(\d+)\]|\[("(?:[^"\\]|\\.)*")\]|\.?([A-Za-z][A-Za-z0-9-]*)/y;
  for (let at = 0; at < place.length; at = one.lastIndex) {
    one.lastIndex = at;
    const found = one.exec(place);
    if (found === null) throw new Error(`not a place: ${place}`);
    const [, index, quoted, name] = found;
    steps.push(index !== undefined ? Number(index) : quoted !== undefined ? String(JSON.parse(quoted)) : (name ?? ''));
  }
  return steps;
};

/** The path with the names in full that the place had cut. */
const inFull = (data: unknown, steps: DataPath): DataPath => {
  const full: (string | number)[] = [];
  for (const step of steps) {
    const here = valueAt(data, full);
    const isCut = typeof step === 'string' && step.endsWith('…') && typeof here === 'object' && here !== null;
    const whole = isCut ? Object.keys(here).find((name) => name.startsWith(step.slice(0, -1))) : undefined;
    full.push(whole ?? step);
  }
  return full;
};

const linesIn = (text: string): number => text.split('\n').length;

/** Whether a place is in the file: what stands there, or what should hold it where it is missing. */
const isInFile = (place: string, text: string): boolean => {
  const line = /(?:^|, )line (\d+)(?:, column \d+)?$/.exec(place);
  if (line !== null && Number(line[1]) > linesIn(text)) return false;
  const path = place.replace(/(?:^|, )line \d+(?:, column \d+)?$/, '');
  if (path === '') return line !== null;
  const data: unknown = JSON.parse(text);
  return leadsSomewhere(data, inFull(data, stepsOf(path)));
};

/** What no sentence to a person holds: words of a program, or of a library that answers for it. */
const ofProgram = /undefined|\[object|Invalid input|Invalid key|expected .* received|TypeError|at .*\.ts|\n/;

/** What is wrong with what is said of a boat file; undefined where a person can do something with it. */
export const faultOfWords = (says: string, whatToDo: string): string | undefined => {
  if (says.length < 10 || says.length > 400) return `says too little or too much: ${says.slice(0, 200)}`;
  if (whatToDo.length < 4 || whatToDo.length > 2000) return `what to do: "${whatToDo.slice(0, 200)}" of ${says}`;
  // an odd text of the file may be quoted or stand in a place; it is looked at apart from it
  const own = says.replace(/"(?:[^"\\]|\\.)*"…?|`[^`]*`|"[^"]*…|\bat [^\s:]+:/g, '');
  return ofProgram.test(own) ? `speaks like a program: ${says}` : undefined;
};

/** Whether a path leads to something in parsed JSON, or to what should hold it where it is missing. */
export const leadsSomewhere = (data: unknown, path: DataPath): boolean =>
  valueAt(data, path) !== undefined || typeof valueAt(data, path.slice(0, -1)) === 'object';

/** What is wrong with a refusal; undefined where it is one that a person can do something with. */
export const faultOfRefusal = (error: unknown, text: string): string | undefined => {
  if (!(error instanceof UserError))
    return `threw ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`;
  const { says, place, whatToDo } = error;
  const fault = faultOfWords(says, whatToDo);
  if (fault !== undefined) return fault;
  if (place === undefined)
    return /empty|not a text file|is JSON, but not|MB/.test(says) ? undefined : `no place: ${says}`;
  return isInFile(place, text) ? undefined : `a place that is not there: ${place} of ${says}`;
};
