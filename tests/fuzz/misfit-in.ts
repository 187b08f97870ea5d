import * as z from 'zod';
import type { BoatProblem } from '../../src/core/boat/boat-problem.ts';
import { boatSchema } from '../../src/core/boat/boat-schema.ts';
import { bareSchema } from '../../src/core/boat/schema-at.ts';
import { schemaProblems } from '../../src/core/boat/schema-problems.ts';
import type { DataPath } from './places-in.ts';
import type { BoatData } from './small-boats.ts';

type Issue = z.core.$ZodIssue;
type Schema = z.core.$ZodType;

const isReal = (value: unknown): value is BoatData =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Whether a schema looks at a value part by part and at nothing else. */
const isBare = ({ _zod: { def } }: Schema): boolean => (def.checks ?? []).length === 0;

const isOptional = (schema: Schema): boolean => schema instanceof z.ZodExactOptional || schema instanceof z.ZodOptional;

/** Whether an object has just names that its schema knows, and lacks none. */
const hasItsNames = (shape: Readonly<Record<string, Schema>>, value: BoatData): boolean =>
  Object.keys(value).every((name) => Object.hasOwn(shape, name)) &&
  Object.entries(shape).every(([name, schema]) => Object.hasOwn(value, name) || isOptional(schema));

const parsed = (schema: Schema, value: unknown, path: DataPath): readonly Issue[] => {
  const issues = z.safeParse(schema, value).error?.issues ?? [];
  return issues.map((issue) => ({ ...issue, path: [...path, ...issue.path] }));
};

const firstOf = <Entry>(entries: Iterable<Entry>, issues: (entry: Entry) => readonly Issue[]): readonly Issue[] => {
  for (const entry of entries) {
    const found = issues(entry);
    if (found.length > 0) return found;
  }
  return [];
};

/** What a schema has against a value, where only what is otherwise than in a good one is looked at. */
const issuesIn = (
  schema: Schema,
  value: unknown,
  { good, path }: { good: unknown; path: DataPath },
): readonly Issue[] => {
  // what stands nowhere is no good value
  if (value === good && value !== undefined) return [];
  const bare = bareSchema(schema);
  if (isBare(bare) && bare instanceof z.ZodArray && Array.isArray(value) && Array.isArray(good)) {
    // an entry that was good is so wherever it stands now
    const known = new Set<unknown>(good);
    return firstOf(value.entries(), ([at, entry]) =>
      known.has(entry) ? [] : issuesIn(bare.element, entry, { good: good[at], path: [...path, at] }),
    );
  }
  if (isBare(bare) && bare instanceof z.ZodObject && isReal(value) && isReal(good) && hasItsNames(bare.shape, value)) {
    return firstOf(Object.entries(value), ([name, entry]) =>
      issuesIn(bare.shape[name], entry, {
        good: Object.hasOwn(good, name) ? good[name] : undefined,
        path: [...path, name],
      }),
    );
  }
  return parsed(schema, value, path);
};

/** The first thing that the schema has against a boat that was good before she was damaged. */
export const misfitIn = (good: BoatData, data: BoatData): BoatProblem | undefined => {
  const issues = issuesIn(boatSchema, data, { good, path: [] });
  return issues.length === 0 ? undefined : schemaProblems(boatSchema, data, issues)[0];
};
