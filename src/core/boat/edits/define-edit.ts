import type { Draft } from 'mutative';
import type * as z from 'zod';
import { sentenceOf } from '../boat-problem.ts';
import type { Boat } from '../boat-schema.ts';
import { inPlace } from '../in-place.ts';
import { placeInFile } from '../place-in-file.ts';
import { schemaProblems } from '../schema-problems.ts';
import { UserError } from '../user-error.ts';
import { refuseBroken } from './refuse-broken.ts';

/** One edit with its parameters checked: what it does as a sentence, and the change itself. */
export interface ReadyEdit {
  /** the sentence, with the names that things have in this boat */
  readonly title: (boat: Boat) => string;
  /** changes a draft of the boat; throws UserError where the boat has no such thing, leaving the boat as it was */
  readonly change: (boat: Draft<Boat>) => void;
}

/** A way to change a boat, shared by menus, keys and buttons; one step of undo. */
export interface Edit<Schema extends z.ZodType = z.ZodType> {
  readonly id: string;
  readonly params: Schema;
  readonly title: (params: z.infer<Schema>, boat: Boat) => string;
  /** checks the parameters, whatever they are; throws UserError where they do not fit */
  readonly ready: (params: unknown) => ReadyEdit;
  /** the boat with the change in it; throws UserError as `ready` and the change do */
  readonly apply: (boat: Boat, params: unknown) => Boat;
}

const checkedParams = <Schema extends z.ZodType>(id: string, schema: Schema, params: unknown): z.infer<Schema> => {
  const parsed = schema.safeParse(params);
  if (parsed.success) return parsed.data;
  const [first, ...rest] = schemaProblems(schema, params, parsed.error.issues);
  if (first === undefined) throw parsed.error;
  throw new UserError({
    says: sentenceOf(first),
    place: placeInFile([id, ...first.path]),
    whatToDo: first.whatToDo,
    more: rest.map((problem) => `  ${placeInFile([id, ...problem.path])}: ${sentenceOf(problem)}`),
  });
};

/** Makes an edit of its name, the schema of its parameters, its sentence and its change of a draft. */
export const defineEdit = <Schema extends z.ZodType>({
  id,
  params: schema,
  title,
  change,
}: {
  id: string;
  params: Schema;
  title: (params: z.infer<Schema>, boat: Boat) => string;
  change: (boat: Draft<Boat>, params: z.infer<Schema>) => void;
}): Edit<Schema> => {
  const ready = (given: unknown): ReadyEdit => {
    const params = checkedParams(id, schema, given);
    return { title: (boat) => title(params, boat), change: (boat) => change(boat, params) };
  };
  const apply = (boat: Boat, params: unknown): Boat => {
    const changed = inPlace(boat, ready(params).change);
    refuseBroken(changed);
    return changed;
  };
  return { id, params: schema, title, ready, apply };
};
