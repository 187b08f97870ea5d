import type { Draft } from 'mutative';
import type { Boat } from '../boat-schema.ts';
import { boatSchema } from '../boat-schema.ts';
import { checkReferences } from '../check-references.ts';
import { inPlace } from '../in-place.ts';
import type { Difference } from './differences.ts';
import { entryKey, isRecord, type MergePath, piecesOf } from './merge-parts.ts';

type Container = Record<string, unknown> | unknown[];

const isContainer = (value: unknown): value is Container => typeof value === 'object' && value !== null;

const childOf = (at: Container, path: MergePath, depth: number): unknown => {
  const name = path[depth]?.name ?? '';
  if (!Array.isArray(at)) return at[name];
  const list = path[depth - 1]?.name ?? '';
  return at.find((entry) => entryKey(list, entry) === name);
};

const put = (at: Container, path: MergePath, depth: number, value: unknown): void => {
  const name = path[depth]?.name ?? '';
  if (!Array.isArray(at)) {
    if (value === undefined) delete at[name];
    else at[name] = value;
    return;
  }
  const list = path[depth - 1]?.name ?? '';
  const index = at.findIndex((entry) => entryKey(list, entry) === name);
  if (value === undefined && index >= 0) at.splice(index, 1);
  else if (index >= 0) at[index] = value;
  else if (value !== undefined) at.push(value);
};

const applyOne = (draft: Draft<Boat>, { path, value }: Difference): void => {
  let at: Container = draft as Record<string, unknown>;
  for (let depth = 0; depth < path.length - 1; depth += 1) {
    let child = childOf(at, path, depth);
    if (!isContainer(child)) {
      // an entry that is not there has no fields to set; an absent list or table starts empty
      if (value === undefined || Array.isArray(at)) return;
      put(at, path, depth, path[depth + 1]?.in === 'list' ? [] : {});
      child = childOf(at, path, depth);
    }
    if (!isContainer(child)) return;
    at = child;
  }
  put(at, path, path.length - 1, value);
};

const withAll = (boat: Boat, changes: readonly Difference[]): Boat =>
  changes.length === 0
    ? boat
    : inPlace(boat, (draft) => {
        for (const change of changes) applyOne(draft, change);
      });

const holds = (boat: Boat): boolean => boatSchema.safeParse(boat).success && checkReferences(boat).length === 0;

interface Applied {
  readonly boat: Boat;
  readonly left: readonly Difference[];
}

/** As many of the changes as leave the boat whole: all at once, else by halves. */
const asManyAsHold = (boat: Boat, changes: readonly Difference[]): Applied => {
  if (changes.length === 0) return { boat, left: [] };
  const all = withAll(boat, changes);
  if (holds(all)) return { boat: all, left: [] };
  if (changes.length === 1) return { boat, left: changes };
  const middle = Math.ceil(changes.length / 2);
  const first = asManyAsHold(boat, changes.slice(0, middle));
  const second = asManyAsHold(first.boat, changes.slice(middle));
  return { boat: second.boat, left: [...first.left, ...second.left] };
};

/**
 * Makes changes in a good boat so that it stays good. What does not fit is tried again after the others, for one change
 * may wait for another; what never fits is left.
 */
export const applyDifferences = (boat: Boat, changes: readonly Difference[]): Applied => {
  let made = asManyAsHold(boat, changes);
  for (;;) {
    if (made.left.length === 0) return made;
    const again = asManyAsHold(made.boat, made.left);
    if (again.left.length === made.left.length) return made;
    made = again;
  }
};

const pruned = (path: MergePath, versions: { made: unknown; ours: unknown; theirs: unknown }): unknown => {
  const { made, ours, theirs } = versions;
  const pieces = made === undefined ? undefined : piecesOf(path, [made, ours, theirs]);
  if (pieces === undefined) return made;
  const isAbsentSomewhere = ours === undefined || theirs === undefined;
  if (isAbsentSomewhere) return pieces.versions[0]?.size === 0 ? undefined : made;
  const [ofMade, ofOurs, ofTheirs] = pieces.versions;
  const inner = [...(ofMade ?? [])].flatMap(([name, value]) => {
    const kept = pruned([...path, { in: pieces.in, name }], {
      made: value,
      ours: ofOurs?.get(name),
      theirs: ofTheirs?.get(name),
    });
    return kept === undefined ? [] : [[name, kept] as const];
  });
  return Array.isArray(made) ? inner.map(([, value]) => value) : Object.fromEntries(inner);
};

/** The boat without lists and tables that are empty and that one of the two versions has not got at all. */
export const withoutEmpty = (made: Boat, { ours, theirs }: { ours: Boat; theirs: Boat }): Boat => {
  const kept = pruned([], { made, ours, theirs });
  // reason: only optional lists and tables that are empty were taken out
  return isRecord(kept) ? (kept as unknown as Boat) : made;
};
