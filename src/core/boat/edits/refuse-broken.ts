import * as z from 'zod';
import { type BoatProblem, sentenceOf } from '../boat-problem.ts';
import { type Boat, boatSchema } from '../boat-schema.ts';
import { checkReferences } from '../check-references.ts';
import { schemaProblems } from '../schema-problems.ts';
import { UserError } from '../user-error.ts';

/** Parts of boats that fit the schema: an edit leaves most parts of a boat the very ones they were. */
const fitting = new WeakSet<object>();

/** The first thing in a boat that the schema of the file does not allow, such as a length no boat has. */
const misfitIn = (boat: Boat): BoatProblem | undefined => {
  const parts = new Map<string, unknown>(Object.entries(boat));
  const unknown = [...parts.keys()].find((name) => !Object.hasOwn(boatSchema.shape, name));
  if (unknown !== undefined) {
    return { path: [unknown], says: `\`${unknown}\` is no part of a boat.`, whatToDo: 'Take it out.' };
  }
  for (const [name, schema] of Object.entries(boatSchema.shape)) {
    const part = parts.get(name);
    const isThing = typeof part === 'object' && part !== null;
    const mayBeAbsent = part === undefined && schema instanceof z.ZodExactOptional;
    if (mayBeAbsent || (isThing && fitting.has(part))) continue;
    const parsed = schema.safeParse(part);
    if (!parsed.success) return schemaProblems(schema, part, parsed.error.issues)[0];
    if (isThing) fitting.add(part);
  }
  return undefined;
};

/** Throws UserError with the first thing that an edit left broken, so that no edit makes a boat that cannot be read again. */
export const refuseBroken = (boat: Boat): void => {
  const problem = misfitIn(boat) ?? checkReferences(boat)[0];
  if (problem !== undefined) throw new UserError({ says: sentenceOf(problem), whatToDo: problem.whatToDo });
};
