import * as z from 'zod';
import { bareSchema, schemaOfEntry } from './schema-at.ts';

type Issue = z.core.$ZodIssue;
type Path = readonly (string | number)[];

/** Issues after which a file is no longer searched for more. */
const issuesAtMost = 100;

/** The entries of a value that its schema checks one by one; of an object only those that hold entries themselves. */
const entriesOf = (schema: z.core.$ZodType, value: unknown): [step: string | number, entry: unknown][] => {
  if (typeof value !== 'object' || value === null) return [];
  if (Array.isArray(value)) return schema instanceof z.ZodArray ? [...value.entries()] : [];
  if (schema instanceof z.ZodRecord) return Object.entries(value);
  if (!(schema instanceof z.ZodObject)) return [];
  return Object.entries(value).filter(([, entry]) => typeof entry === 'object' && entry !== null);
};

/** Values so small that all their issues together fill no memory. */
const smallAtMost = 20_000;

/** How many values a value holds, itself included; counted no further than what is left. */
const countIn = (value: unknown, left: number): number => {
  if (typeof value !== 'object' || value === null) return 1;
  let count = 1;
  for (const entry of Object.values(value)) {
    if (count > left) return count;
    count += countIn(entry, left - count);
  }
  return count;
};

const isSmall = (value: unknown): boolean => countIn(value, smallAtMost) <= smallAtMost;

/** Adds the issues of the small parts of a value until there are enough; a part is looked at once, and by itself. */
const collect = (schema: z.core.$ZodType, value: unknown, { path, issues }: { path: Path; issues: Issue[] }): void => {
  if (isSmall(value)) {
    const parsed = z.safeParse(schema, value);
    for (const issue of parsed.error?.issues ?? []) issues.push({ ...issue, path: [...path, ...issue.path] });
    return;
  }
  for (const [step, entry] of entriesOf(bareSchema(schema), value)) {
    if (issues.length >= issuesAtMost) return;
    const inner = schemaOfEntry(schema, step);
    if (inner !== undefined) collect(inner, entry, { path: [...path, step], issues });
  }
};

/**
 * Parses data by a schema, but stops looking once there are about a hundred issues: a file with a million faulty entries
 * would otherwise fill the memory with them. The issues come in the schema's order unless the search was stopped.
 */
export const checkedBySchema = <Schema extends z.ZodType>(
  schema: Schema,
  data: unknown,
): { data: z.infer<Schema> } | { issues: readonly Issue[]; searchedAll: boolean } => {
  const issues: Issue[] = [];
  if (!isSmall(data)) collect(schema, data, { path: [], issues });
  if (issues.length >= issuesAtMost) return { issues, searchedAll: false };
  const parsed = schema.safeParse(data);
  return parsed.success ? { data: parsed.data } : { issues: parsed.error.issues, searchedAll: true };
};
