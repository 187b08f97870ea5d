import { type BoatProblem, sentenceOf } from '../boat-problem.ts';
import type { Kit } from '../boat-schema.ts';
import { type FilePath, placeInFile } from '../place-in-file.ts';
import { rememberFor } from '../remember-for.ts';
import { bareSchema, knownNames, schemaOfEntry } from '../schema-at.ts';
import { schemaProblems } from '../schema-problems.ts';
import { type Sheet, sheetSchema } from '../sheet.ts';
import { applyChanges, namesOf } from '../sheet-changes.ts';
import { shortened } from '../shortened.ts';
import { checkSheet } from './check-sheet.ts';

type Change = NonNullable<Kit['changes']>[number];

const entryOf = (value: unknown, step: string): unknown =>
  Array.isArray(value)
    ? value.find((entry) => namesOf(entry).includes(step))
    : new Map(Object.entries(value ?? {})).get(step);

/** Why a change's path leads nowhere in a sheet; undefined where it holds. */
const brokenStep = (sheet: Sheet, change: Change): Pick<BoatProblem, 'says' | 'near'> | undefined => {
  const steps = change.path.split('.');
  let schema = bareSchema(sheetSchema);
  let value: unknown = sheet;
  for (const [at, step] of steps.entries()) {
    const under = at === 0 ? `the sheet "${sheet.id}"` : `\`${steps.slice(0, at).join('.')}\``;
    if (typeof value !== 'object' || value === null) {
      return { says: `The sheet "${sheet.id}" has no ${under} to change a part of.` };
    }
    const names = Array.isArray(value) ? value.flatMap(namesOf) : knownNames(schema);
    const next = schemaOfEntry(schema, step);
    if (next === undefined || !names.includes(step)) {
      return { says: `There is no \`${shortened(step)}\` in ${under}.`, near: { given: step, known: names } };
    }
    value = entryOf(value, step);
    schema = bareSchema(next);
  }
  return steps.at(-1) === 'id' ? { says: 'An id cannot be changed for one unit.' } : undefined;
};

/** What is wrong with changes to a sheet, from the unit on. */
const wrongWith = rememberFor({
  most: 16,
  keyOf: (changes: readonly Change[]) => JSON.stringify(changes),
  find: (sheet: Sheet, changes): readonly BoatProblem[] => {
    let changed = sheet;
    for (const [at, change] of changes.entries()) {
      const broken = brokenStep(changed, change);
      if (broken !== undefined) {
        const whatToDo = 'Write the names as they stand in the sheet; what the sheet lacks is given whole.';
        return [{ path: ['changes', at, 'path'], whatToDo, ...broken }];
      }
      changed = applyChanges(changed, [change]);
    }
    const parsed = sheetSchema.safeParse(changed);
    const problems = parsed.success
      ? checkSheet(parsed.data, [])
      : schemaProblems(sheetSchema, changed, parsed.error.issues);
    return problems.map((problem) => ({
      path: ['changes'],
      says: `With these changes the sheet no longer holds, at ${placeInFile(problem.path)}: ${sentenceOf(problem)}`,
      whatToDo: problem.whatToDo,
    }));
  },
});

/** What is wrong with one unit's changes to its sheet: paths that lead nowhere, or a sheet that no longer holds with them. */
export const checkChanges = ({ changes = [] }: Kit, sheet: Sheet, path: FilePath): BoatProblem[] =>
  changes.length === 0
    ? []
    : wrongWith(sheet, changes).map((problem) => ({ ...problem, path: [...path, ...problem.path] }));
