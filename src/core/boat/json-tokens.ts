import { UserError } from './user-error.ts';

/** The line and column, counted from 1, of a position in a text. */
export const lineAndColumn = (text: string, at: number): { line: number; column: number } => {
  let line = 1;
  let lineStart = 0;
  for (let found = text.indexOf('\n'); found >= 0 && found < at; found = text.indexOf('\n', lineStart)) {
    line += 1;
    lineStart = found + 1;
  }
  return { line, column: at - lineStart + 1 };
};

/** A refusal of the text at one position, with its line and column. */
export const refusedText = ({
  text,
  at,
  says,
  whatToDo,
}: {
  text: string;
  at: number;
  says: string;
  whatToDo: string;
}): UserError => {
  const { line, column } = lineAndColumn(text, at);
  return new UserError({ says, place: `line ${line}, column ${column}`, whatToDo });
};

const isSpace = (code: number): boolean => code === 32 || code === 10 || code === 13 || code === 9;

/** The next position that holds no white space. */
export const skipSpace = (text: string, from: number): number => {
  let at = from;
  while (isSpace(text.charCodeAt(at))) at += 1;
  return at;
};

const cutShort = (text: string): UserError =>
  refusedText({
    text,
    at: text.length,
    says: 'The file ends in the middle: something that was opened is never closed.',
    whatToDo: 'Part of the file is missing; take the last backup, or close what is open.',
  });

/** What stands at a position, short enough to print. */
const seenAt = (text: string, at: number): string => {
  const word = /^[\p{L}\p{N}_.+-]{1,20}/u.exec(text.slice(at, at + 20))?.[0];
  return JSON.stringify(word ?? String.fromCodePoint(text.codePointAt(at) ?? 0));
};

/** The refusal of a text where something else should stand; at the end of the text, that it was cut short. */
export const unexpected = (text: string, at: number, wanted: string): UserError =>
  at >= text.length
    ? cutShort(text)
    : refusedText({
        text,
        at,
        says: `This is not JSON: ${wanted} should stand here, not ${seenAt(text, at)}.`,
        whatToDo: 'Mend the text there and open the file again.',
      });

const badEscape = (text: string, at: number): UserError =>
  refusedText({
    text,
    at,
    says: 'This is not JSON: a backslash in a text is followed by something JSON does not know.',
    whatToDo: 'Write \\\\ for a backslash, \\" for a quote, or \\u and four hexadecimal digits.',
  });

/** Position after a text's closing quote. */
export const endOfText = (text: string, from: number): number => {
  let at = from + 1;
  for (;;) {
    const code = text.charCodeAt(at);
    if (code === 34) return at + 1;
    if (at >= text.length) throw cutShort(text);
    if (code < 32) {
      throw refusedText({
        text,
        at,
        says: 'This is not JSON: a text runs over the end of its line, or holds a control character.',
        whatToDo: 'Close the text with a quote before the line ends; write \\n for a new line in it.',
      });
    }
    if (code === 92) {
      const escaped = /^(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/.exec(text.slice(at + 1, at + 6))?.[0];
      if (escaped === undefined) throw badEscape(text, at);
      at += escaped.length;
    }
    at += 1;
  }
};

const endOfNumber = (text: string, from: number): number => {
  const written = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
  written.lastIndex = from;
  const found = written.exec(text)?.[0];
  if (found === undefined) throw unexpected(text, from, 'a value');
  const at = from + found.length;
  if (/[\p{L}\p{N}_.+-]/u.test(text.charAt(at))) {
    throw refusedText({
      text,
      at: from,
      says: `This is not a number JSON knows: ${seenAt(text, from)}.`,
      whatToDo: 'Write it in plain digits with a point, for example 12.5, with no unit and no leading 0 or +.',
    });
  }
  if (!Number.isFinite(Number(found))) {
    throw refusedText({
      text,
      at: from,
      says: 'This number is too large to read.',
      whatToDo: 'Write a smaller number.',
    });
  }
  return at;
};

const words = ['true', 'false', 'null'];

const endOfWord = (text: string, from: number): number => {
  const word = /^[\p{L}\p{N}_]+/u.exec(text.slice(from, from + 40))?.[0];
  if (word !== undefined && words.includes(word)) return from + word.length;
  if (word === 'NaN' || word === 'Infinity' || word === 'undefined' || word === 'None') {
    throw refusedText({
      text,
      at: from,
      says: `This is not JSON: ${word} is not a value.`,
      whatToDo: 'Write the number, or leave the whole entry out where it is not known.',
    });
  }
  throw unexpected(text, from, 'a value');
};

/** Position after a number, text or word. */
export const endOfScalar = (text: string, from: number): number => {
  const first = text.charAt(from);
  if (first === '"') return endOfText(text, from);
  if (first === '-' || (first >= '0' && first <= '9')) return endOfNumber(text, from);
  return endOfWord(text, from);
};
