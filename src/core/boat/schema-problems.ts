import type * as z from 'zod';
import type { BoatProblem } from './boat-problem.ts';
import { nearestName } from './nearest-name.ts';
import type { FilePath } from './place-in-file.ts';
import { knownNames, schemaAt } from './schema-at.ts';
import { shortened } from './shortened.ts';

type Issue = z.core.$ZodIssue;

/** Unknown names of one object that are told of; a hostile file may have a million. */
const unknownAtMost = 100;

const kindsInWords: Readonly<Record<string, string>> = {
  string: 'a text in double quotes',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list in square brackets',
  tuple: 'a list in square brackets',
  object: 'an object in curly brackets',
  record: 'an object in curly brackets',
};

/** A value as it can be shown in a sentence. */
const shown = (value: unknown): string => {
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object' && value !== null) return 'an object';
  if (value === undefined) return 'nothing';
  return shortened(typeof value === 'number' ? String(value) : JSON.stringify(value), 40);
};

/** The value at a path of parsed JSON; undefined where there is none. */
const valueAt = (data: unknown, path: readonly PropertyKey[]): unknown => {
  let value = data;
  for (const step of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, step)) return undefined;
    // reason: the line above has made sure of the entry
    value = (value as Record<PropertyKey, unknown>)[step];
  }
  return value;
};

const stepsOf = (path: readonly PropertyKey[]): FilePath =>
  path.map((step) => (typeof step === 'number' ? step : String(step)));

const nameAt = (path: FilePath): string => {
  const last = path.at(-1);
  return typeof last === 'string' ? `\`${shortened(last)}\`` : 'This entry';
};

const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;

const wrongKind = (issue: z.core.$ZodIssueInvalidType, path: FilePath, value: unknown): BoatProblem => {
  const wanted = kindsInWords[issue.expected] ?? issue.expected;
  if (value === undefined) {
    return { path, says: `${nameAt(path)} is missing.`, whatToDo: `Add it: ${wanted}.` };
  }
  if (value === null) {
    const says = `${nameAt(path)} is null; what is not known is left out of the file.`;
    return { path, says, whatToDo: `Take it out, or give ${wanted}.` };
  }
  return {
    path,
    says: `${nameAt(path)} should be ${wanted}, not ${shown(value)}.`,
    whatToDo: `Write ${wanted} there.`,
  };
};

const wrongValue = (values: readonly unknown[], path: FilePath, value: unknown): BoatProblem => {
  const known = values.map(String);
  if (value === undefined) return { path, says: `${nameAt(path)} is missing.`, whatToDo: `Add it: ${listed(known)}.` };
  const whatToDo =
    known.length > 20 ? 'Write one of the words listed in docs/file-format.md.' : `Write ${listed(known)}.`;
  const says = `${shown(value)} is not a choice for ${nameAt(path)}.`;
  return { path, says, whatToDo, ...(typeof value === 'string' ? { near: { given: value, known } } : {}) };
};

const counted = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

/** How much a value measures, in words that go with `name has` or `name is`. */
const sizeOf = (value: unknown, name: string): string => {
  if (typeof value === 'string') return `${name} has ${counted(value.length, 'character', 'characters')}`;
  if (Array.isArray(value)) return `${name} has ${counted(value.length, 'entry', 'entries')}`;
  return `${name} is ${shown(value)}`;
};

const wrongSize = (
  issue: z.core.$ZodIssueTooSmall | z.core.$ZodIssueTooBig,
  path: FilePath,
  value: unknown,
): BoatProblem => {
  const small = issue.code === 'too_small';
  const bound = small ? issue.minimum : issue.maximum;
  const strictly = small ? 'more than' : 'less than';
  const bounded = issue.inclusive === false ? strictly : small ? 'at least' : 'at most';
  const says = `${sizeOf(value, nameAt(path))}; it must be ${bounded} ${bound}.`;
  return { path, says, whatToDo: 'Mend the value.' };
};

const unknownName = (key: string, path: FilePath, known: readonly string[]): BoatProblem => ({
  path: [...path, key],
  says: `\`${shortened(key)}\` is not a name known here.`,
  near: { given: key, known },
  whatToDo: known.length === 0 ? 'Take it out.' : `Mend the name or take it out; known here: ${known.join(', ')}.`,
});

const noneOfUnion = (issue: z.core.$ZodIssueInvalidUnion, path: FilePath, value: unknown): BoatProblem => {
  const all = issue.errors.flat();
  const values = all.flatMap((part) => (part.code === 'invalid_value' ? part.values : []));
  if (values.length > 0) return wrongValue(values, path, value);
  const forms = all.filter((part) => part.code === 'invalid_format').map((part) => part.message);
  if (forms.length > 0) {
    return {
      path,
      says: `${shown(value)} is neither an id nor unit.port.`,
      whatToDo: [...new Set(forms)].join(' Or: '),
    };
  }
  const first = all.find((part) => part.code === 'invalid_type');
  if (first !== undefined) return wrongKind(first, path, value);
  return { path, says: `${shown(value)} does not fit here.`, whatToDo: 'See docs/file-format.md for what does.' };
};

const problemsOfIssue = (issue: Issue, { data, schema }: { data: unknown; schema: z.core.$ZodType }): BoatProblem[] => {
  const path = stepsOf(issue.path);
  const value = valueAt(data, issue.path);
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys
        .slice(0, unknownAtMost)
        .map((key) => unknownName(key, path, knownNames(schemaAt(schema, path))));
    case 'invalid_type':
      return [wrongKind(issue, path, value)];
    case 'invalid_value':
      return [wrongValue(issue.values, path, value)];
    case 'too_small':
    case 'too_big':
      return [wrongSize(issue, path, value)];
    case 'invalid_union':
      return [noneOfUnion(issue, path, value)];
    case 'invalid_format':
      return [{ path, says: `${nameAt(path)} cannot be ${shown(value)}.`, whatToDo: issue.message }];
    case 'invalid_key':
      return [
        { path, says: `The name ${shown(path.at(-1))} cannot stand here.`, whatToDo: issue.issues[0]?.message ?? '' },
      ];
    default:
      return [{ path, says: issue.message, whatToDo: 'Mend it and open the file again.' }];
  }
};

/**
 * What a zod schema has against some parsed JSON, as sentences in the order of the schema. A name that is missing is not
 * told of when the same object has an unknown name near it: that is one slip, not two.
 */
export const schemaProblems = (schema: z.core.$ZodType, data: unknown, issues: readonly Issue[]): BoatProblem[] => {
  const misspelt = new Set<string>();
  for (const issue of issues) {
    if (issue.code !== 'unrecognized_keys') continue;
    const path = stepsOf(issue.path);
    const known = knownNames(schemaAt(schema, path));
    for (const key of issue.keys.slice(0, unknownAtMost))
      misspelt.add(JSON.stringify([...path, nearestName(key, known) ?? '']));
  }
  return issues
    .filter((issue) => valueAt(data, issue.path) !== undefined || !misspelt.has(JSON.stringify(stepsOf(issue.path))))
    .flatMap((issue) => problemsOfIssue(issue, { data, schema }));
};
