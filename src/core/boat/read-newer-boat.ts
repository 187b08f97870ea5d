import { type Boat, boatSchema } from './boat-schema.ts';
import { checkReferences } from './check-references.ts';
import { emptyParts } from './empty-parts.ts';
import { keepKnown, nothingKept } from './keep-known.ts';
import type { FileData } from './migrations/run-migrations.ts';
import type { FilePath } from './place-in-file.ts';
import { boatDataIn } from './read-boat.ts';
import { UserError } from './user-error.ts';

/** How many entries of one part of the file were left out. */
export interface LeftOutPart {
  /** the name of the part as it stands in the file */
  readonly part: string;
  readonly count: number;
}

/** A boat out of a file that a newer program wrote, as far as this one can read it. */
export interface NewerBoat {
  readonly version: number;
  readonly boat: Boat;
  readonly leftOut: readonly LeftOutPart[];
}

const known = boatSchema.shape.version.value;
const mostRounds = 100;

const unreadable = (): UserError =>
  new UserError({
    says: 'This file was made by a newer program, and this one cannot read enough of it to show her.',
    whatToDo: 'Open it with a newer Fairlead; nothing has been changed.',
  });

const partsKnown = (data: FileData, out: (path: FilePath) => void): FileData => {
  // what stands in for a part that must be there and cannot be read
  const kept: Record<string, unknown> = { name: '?', ...emptyParts() };
  for (const [name, value] of Object.entries(data)) {
    if (name === 'version') continue;
    const schema = new Map(Object.entries(boatSchema.shape)).get(name);
    if (schema === undefined) out([name]);
    const part = schema === undefined ? nothingKept : keepKnown(schema, value, { path: [name], out });
    if (part !== nothingKept) kept[name] = part;
  }
  return { ...kept, version: known };
};

/** Copies what leads to a place, and takes out what stands there: the deepest entry of the path that is there. */
const without = (value: unknown, [step, ...rest]: FilePath): unknown => {
  if (step === undefined || typeof value !== 'object' || value === null || !Object.hasOwn(value, step))
    return nothingKept;
  // reason: the line above has made sure of the entry
  const inner = without((value as Record<string | number, unknown>)[step], rest);
  if (Array.isArray(value)) return value.map((entry, at) => (at === step ? inner : entry));
  return { ...value, [step]: inner };
};

/**
 * Reads a file of a newer version, to be looked at and never saved: what this version does not know, does not fit or leads
 * nowhere without the rest is left out. Throws UserError where what is left is no boat.
 */
export const readNewerBoat = (text: string): NewerBoat => {
  const { data, version } = boatDataIn(text);
  if (version <= known) throw new Error('A file of a version that is known is read as it stands.');
  const counts = new Map<string, number>();
  const out = ([part]: FilePath): void => {
    counts.set(String(part), (counts.get(String(part)) ?? 0) + 1);
  };
  let current = partsKnown(data, out);
  for (let round = 0; round < mostRounds; round += 1) {
    const parsed = boatSchema.safeParse(current);
    if (!parsed.success) throw unreadable();
    const problems = checkReferences(parsed.data);
    if (problems.length === 0) {
      return { version, boat: parsed.data, leftOut: [...counts].map(([part, count]) => ({ part, count })) };
    }
    let cut: unknown = parsed.data;
    for (const { path } of problems) cut = path.length === 0 ? cut : without(cut, path);
    // reason: only entries inside were taken out
    current = partsKnown(cut as FileData, out);
  }
  throw unreadable();
};
