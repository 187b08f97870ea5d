import type { Kit } from './boat-schema.ts';
import type { Sheet } from './sheet.ts';

type Node = { [key: string]: unknown } | unknown[];
type Change = NonNullable<Kit['changes']>[number];

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null;

/** The names by which an entry of a list in a sheet is addressed in a path. */
export const namesOf = (entry: unknown): string[] =>
  isNode(entry) && !Array.isArray(entry)
    ? [entry.id, entry.port, entry.pgn, entry.sentence, entry.reading].filter((name) => name !== undefined).map(String)
    : [];

const keyIn = (node: Node, step: string): string | number | undefined => {
  if (!Array.isArray(node)) return step;
  const at = node.findIndex((entry) => namesOf(entry).includes(step));
  return at < 0 ? undefined : at;
};

// A value is copied too, for a later change may reach into it.
const copyOf = <Value>(value: Value): Value => JSON.parse(JSON.stringify(value)) as Value;

/** Makes one change in a sheet that is nobody else's; nothing where its path leads nowhere. */
const change = (sheet: Sheet, { path, value }: Change): void => {
  const steps = path.split('.');
  const last = steps.pop();
  let node: Node = sheet as unknown as Node;
  for (const step of steps) {
    const key = keyIn(node, step);
    const next: unknown = key === undefined ? undefined : (node as Record<string | number, unknown>)[key];
    if (!isNode(next)) return;
    node = next;
  }
  const key = last === undefined ? undefined : keyIn(node, last);
  if (key === undefined) return;
  if (value !== undefined) (node as Record<string | number, unknown>)[key] = copyOf(value);
  else if (Array.isArray(node)) node.splice(Number(key), 1);
  else delete node[key];
};

/**
 * A sheet with one unit's own changes in it. Paths go through ids (`ports.n2k.len`, `ports.n2k.sends.129025.everyMs`);
 * an absent value takes the entry out. A path that leads nowhere changes nothing: reading the file refuses it first.
 */
export const applyChanges = (sheet: Sheet, changes: readonly Change[]): Sheet => {
  if (changes.length === 0) return sheet;
  const copy = copyOf(sheet);
  for (const one of changes) change(copy, one);
  return copy;
};
