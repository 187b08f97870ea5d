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

const applyChange = (sheet: Sheet, change: Change): Sheet => {
  const copy = JSON.parse(JSON.stringify(sheet)) as Sheet;
  const steps = change.path.split('.');
  const last = steps.pop();
  if (last === undefined) return sheet;
  let node: Node = copy as unknown as Node;
  for (const step of steps) {
    const key = keyIn(node, step);
    const next: unknown = key === undefined ? undefined : (node as Record<string | number, unknown>)[key];
    if (!isNode(next)) return sheet;
    node = next;
  }
  const key = keyIn(node, last);
  if (key === undefined) return sheet;
  if (change.value !== undefined) (node as Record<string | number, unknown>)[key] = change.value;
  else if (Array.isArray(node)) node.splice(Number(key), 1);
  else delete node[key];
  return copy;
};

/**
 * A sheet with one unit's own changes in it. Paths go through ids (`ports.n2k.len`, `ports.n2k.sends.129025.everyMs`);
 * an absent value takes the entry out. A path that leads nowhere changes nothing: reading the file refuses it first.
 */
export const applyChanges = (sheet: Sheet, changes: readonly Change[]): Sheet => changes.reduce(applyChange, sheet);
