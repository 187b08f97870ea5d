import { type BoatProblem, sentenceOf } from './boat-problem.ts';
import { type Boat, boatSchema } from './boat-schema.ts';
import { checkReferences } from './check-references.ts';
import { checkedBySchema } from './checked-by-schema.ts';
import { refusedText } from './json-tokens.ts';
import { migrations } from './migrations/index.ts';
import { type FileData, runMigrations } from './migrations/run-migrations.ts';
import { nearestName } from './nearest-name.ts';
import { NewerFile } from './newer-file.ts';
import { lineOf, placeInFile } from './place-in-file.ts';
import { scanJson } from './scan-json.ts';
import { schemaProblems } from './schema-problems.ts';
import { UserError } from './user-error.ts';

/** The largest boat file that is read, in bytes. */
export const largestFileBytes = 16_000_000;

const currentVersion = boatSchema.shape.version.value;
const listedAtMost = 5;

const furtherProblems = (rest: readonly BoatProblem[], searchedAll: boolean): string[] => {
  if (rest.length === 0) return [];
  const shown = rest.slice(0, listedAtMost);
  const left = rest.length - shown.length;
  const count = `${searchedAll ? '' : 'at least '}${rest.length}`;
  return [
    rest.length === 1 ? 'There is 1 more problem:' : `There are ${count} more problems:`,
    ...shown.map((problem) => `  ${placeInFile(problem.path)}: ${sentenceOf(problem)}`),
    ...(left > 0 ? [`  and ${left} more`] : []),
  ];
};

const refusal = (text: string, problems: readonly BoatProblem[], searchedAll = true): UserError => {
  const [first, ...rest] = problems;
  if (first === undefined) throw new Error('A file is refused for a reason only.');
  return new UserError({
    says: sentenceOf(first),
    place: `${placeInFile(first.path)}, line ${lineOf(text, first.path)}`,
    whatToDo: first.whatToDo,
    more: furtherProblems(rest, searchedAll),
  });
};

/** A file of which a power cut has left the length and not the content. */
const zeroesFrom = (text: string, at: number): UserError =>
  refusedText({
    text,
    at,
    says: 'From here on the file holds zero bytes in place of text, as a power cut leaves them.',
    whatToDo: 'Take the last backup.',
  });

const checkIsText = (text: string): void => {
  const whatToDo = 'Choose the boat file; its name ends in .boat.json.';
  if (text.length > largestFileBytes) {
    throw new UserError({
      says: `This is ${Math.ceil(text.length / 1_000_000)} MB of text; a boat file is at most 16 MB.`,
      whatToDo,
    });
  }
  if (text.trim() === '') throw new UserError({ says: 'The file is empty.', whatToDo });
  if (/^(?:\uFFFD{2})?(?:\{\0|\0\{)/.test(text)) {
    throw new UserError({
      says: 'The file is written in UTF-16; a boat file is written in UTF-8.',
      whatToDo: 'Save it as UTF-8 in the editor it was written with.',
    });
  }
  const zero = text.indexOf('\0');
  if (zero >= 0 && /^\0*$|^\s*\{/.test(text)) throw zeroesFrom(text, zero);
  // a byte that is no text becomes U+FFFD when a file is read as UTF-8; a picture starts with one
  if (zero >= 0 || /^[^{[]{0,4}\uFFFD/.test(text)) {
    throw new UserError({ says: 'This is not a text file; it may be a picture or a program.', whatToDo });
  }
  const mark = /^(?:<{7}|={7}|>{7})(?=[ \r\n]|$)/m.exec(text);
  if (mark !== null) {
    throw refusedText({
      text,
      at: mark.index,
      says: 'Two versions of the file were put together and not finished: the marks of that stand in it.',
      whatToDo: 'Finish it in the program that did so, or take out one version and the three lines of marks.',
    });
  }
};

const parse = (text: string): FileData => {
  scanJson(text);
  const data: unknown = JSON.parse(text);
  if (typeof data === 'object' && data !== null && !Array.isArray(data)) {
    // reason: an object that JSON.parse made has string keys only
    return data as FileData;
  }
  throw new UserError({
    says: 'This is JSON, but not a boat file: a boat file is one object in curly brackets.',
    whatToDo: 'Choose the boat file; its name ends in .boat.json.',
  });
};

const checkFormat = (data: FileData): void => {
  if (data.format === 'fairlead-boat') return;
  const misspelt = data.format === undefined ? nearestName('format', Object.keys(data)) : undefined;
  throw new UserError({
    says:
      data.format === undefined
        ? 'This is JSON, but not a boat file: it does not say "format": "fairlead-boat".'
        : 'This is not a boat file: its `format` is not "fairlead-boat".',
    place: misspelt ?? 'format',
    whatToDo: misspelt === undefined ? 'Choose another file.' : `Write \`format\` instead of \`${misspelt}\`.`,
  });
};

const versionOf = (data: FileData): number => {
  const { version } = data;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 0) {
    throw new UserError({
      says: 'The file does not say in which version of the format it is written: `version` is not a whole number.',
      place: 'version',
      whatToDo: `Write "version": ${currentVersion} if this program made it.`,
    });
  }
  return version;
};

/**
 * What a text says as a boat file, by its own version, not yet held against any schema. Throws UserError where it is no JSON
 * or no boat file.
 */
export const boatDataIn = (
  text: string,
): { readonly plain: string; readonly data: FileData; readonly version: number } => {
  const plain = text.startsWith('\uFEFF') ? text.slice(1) : text;
  checkIsText(plain);
  const data = parse(plain);
  checkFormat(data);
  return { plain, data, version: versionOf(data) };
};

/**
 * Reads a boat file. Checks in this order: size, that it is JSON (line and column), format, version (older files are
 * migrated), the schema, references and joins. Throws UserError with the first problem, its place and what to do; up to
 * five further problems are listed with it, and NewerFile for a file of a version that is not known yet.
 */
export const readBoat = (text: string): Boat => {
  const { plain, data, version } = boatDataIn(text);
  if (version > currentVersion) throw new NewerFile({ version, known: currentVersion });
  const current = runMigrations(data, { from: version, to: currentVersion, migrations });
  const checked = checkedBySchema(boatSchema, current);
  if ('issues' in checked) {
    throw refusal(plain, schemaProblems(boatSchema, current, checked.issues), checked.searchedAll);
  }
  const problems = checkReferences(checked.data);
  if (problems.length > 0) throw refusal(plain, problems);
  return checked.data;
};
