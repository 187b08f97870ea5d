import { endOfScalar, endOfText, refusedText, skipSpace, unexpected } from './json-tokens.ts';
import { shortened } from './shortened.ts';
import type { UserError } from './user-error.ts';

/** Deepest nesting of lists and objects a file may have; a boat file needs 12. */
const deepest = 64;

interface Frame {
  readonly kind: 'object' | 'list';
  /** names this object already has */
  readonly keys: Set<string>;
}

/** Called for each value with its path and where it starts in the text; the path is reused, so copy what is kept. */
export type Visit = (path: readonly (string | number)[], at: number) => void;

const trailingComma = (text: string, at: number): UserError =>
  refusedText({
    text,
    at,
    says: 'This is not JSON: the comma before this has nothing after it.',
    whatToDo: 'Take the comma out.',
  });

const checkKey = (text: string, at: number, { key, frame }: { key: string; frame: Frame }): void => {
  if (key === '__proto__') {
    throw refusedText({
      text,
      at,
      says: 'The name "__proto__" is not allowed in a boat file.',
      whatToDo: 'Take it out.',
    });
  }
  if (frame.keys.has(key)) {
    throw refusedText({
      text,
      at,
      says: `The name ${JSON.stringify(shortened(key, 40))} is given twice in one place, so it is not clear which one counts.`,
      whatToDo: 'Take one of the two out.',
    });
  }
  frame.keys.add(key);
};

const readKey = (text: string, from: number, frame: Frame): { key: string; at: number } => {
  if (text.charAt(from) !== '"') throw unexpected(text, from, 'a name in double quotes');
  const end = endOfText(text, from);
  const key = String(JSON.parse(text.slice(from, end)));
  checkKey(text, from, { key, frame });
  const colon = skipSpace(text, end);
  if (text.charAt(colon) !== ':') throw unexpected(text, colon, 'a colon');
  return { key, at: skipSpace(text, colon + 1) };
};

const opened = (text: string, at: number, depth: number): Frame => {
  if (depth >= deepest) {
    throw refusedText({
      text,
      at,
      says: `Lists and objects are nested more than ${deepest} deep here.`,
      whatToDo: 'Choose a boat file: one is never nested that deep.',
    });
  }
  return { kind: text.charAt(at) === '{' ? 'object' : 'list', keys: new Set() };
};

/** One pass over a text: the open frames, the path to the value at hand, and the position reached. */
interface Scan {
  readonly text: string;
  readonly frames: Frame[];
  readonly path: (string | number)[];
  at: number;
}

const closes = (frame: Frame, char: string): boolean => char === (frame.kind === 'object' ? '}' : ']');

/** Moves to the first value of a frame just opened; false where it is empty, which then counts as a whole value. */
const enter = (scan: Scan, frame: Frame): boolean => {
  scan.at = skipSpace(scan.text, scan.at + 1);
  if (closes(frame, scan.text.charAt(scan.at))) {
    scan.at += 1;
    return false;
  }
  scan.frames.push(frame);
  const first = frame.kind === 'list' ? { key: 0, at: scan.at } : readKey(scan.text, scan.at, frame);
  scan.path.push(first.key);
  scan.at = first.at;
  return true;
};

/** Moves from the comma after a value to the next value of the same frame. */
const nextInFrame = (scan: Scan, frame: Frame): void => {
  scan.at = skipSpace(scan.text, scan.at + 1);
  if (closes(frame, scan.text.charAt(scan.at))) throw trailingComma(scan.text, scan.at);
  const last = Number(scan.path.pop());
  const next = frame.kind === 'list' ? { key: last + 1, at: scan.at } : readKey(scan.text, scan.at, frame);
  scan.path.push(next.key);
  scan.at = next.at;
};

/** Moves from the end of a value to the next one, out of every frame that closes; false at the end of the text. */
const toNextValue = (scan: Scan): boolean => {
  for (;;) {
    scan.at = skipSpace(scan.text, scan.at);
    const frame = scan.frames.at(-1);
    if (frame === undefined) {
      if (scan.at < scan.text.length) throw unexpected(scan.text, scan.at, 'the end of the file');
      return false;
    }
    const char = scan.text.charAt(scan.at);
    if (char === ',') {
      nextInFrame(scan, frame);
      return true;
    }
    if (!closes(frame, char))
      throw unexpected(scan.text, scan.at, `a comma or "${frame.kind === 'object' ? '}' : ']'}"`);
    scan.frames.pop();
    scan.path.pop();
    scan.at += 1;
  }
};

/**
 * Reads a JSON text through once, without recursion and without building anything. Refuses what is not JSON, a name given
 * twice in one object, `__proto__` as a name, a number beyond reading and nesting deeper than 64, each with line and column.
 * A text that passes is safe for JSON.parse.
 */
export const scanJson = (text: string, visit?: Visit): void => {
  const scan: Scan = { text, frames: [], path: [], at: skipSpace(text, 0) };
  do {
    for (;;) {
      visit?.(scan.path, scan.at);
      const char = text.charAt(scan.at);
      if (char !== '{' && char !== '[') {
        scan.at = endOfScalar(text, scan.at);
        break;
      }
      if (!enter(scan, opened(text, scan.at, scan.frames.length))) break;
    }
  } while (toNextValue(scan));
};
