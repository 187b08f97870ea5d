import { sameValue } from '../same-value.ts';
import { type MergePath, piecesOf } from './merge-parts.ts';

/** One thing that one version of a boat says otherwise; without a value it was taken out. */
export interface Difference {
  readonly path: MergePath;
  readonly value?: unknown;
}

/** One thing that two versions both changed, each in its own way. */
export interface Clash {
  readonly path: MergePath;
  readonly ours?: unknown;
  readonly theirs?: unknown;
}

/** What two versions of a boat changed since the one both come from. */
export interface Differences {
  /** what only ours changed */
  readonly ours: readonly Difference[];
  /** what only theirs changed */
  readonly theirs: readonly Difference[];
  readonly both: readonly Clash[];
}

interface Versions {
  readonly base: unknown;
  readonly ours: unknown;
  readonly theirs: unknown;
}

const given = (value: unknown): { value?: unknown } => (value === undefined ? {} : { value });

const compareWhole = (path: MergePath, { base, ours, theirs }: Versions): Differences => {
  if (sameValue(ours, theirs)) return { ours: [], theirs: [], both: [] };
  if (sameValue(base, ours)) return { ours: [], theirs: [{ path, ...given(theirs) }], both: [] };
  if (sameValue(base, theirs)) return { ours: [{ path, ...given(ours) }], theirs: [], both: [] };
  const clash = {
    path,
    ...(ours === undefined ? {} : { ours }),
    ...(theirs === undefined ? {} : { theirs }),
  };
  return { ours: [], theirs: [], both: [clash] };
};

/** An entry of a list that one side took out, or that only one side has, is compared as a whole. */
const isGoneOrNew = (path: MergePath, { ours, theirs }: Versions): boolean =>
  path.at(-1)?.in === 'list' && (ours === undefined || theirs === undefined);

const compare = (path: MergePath, versions: Versions): Differences => {
  const { base, ours, theirs } = versions;
  if (isGoneOrNew(path, versions)) return compareWhole(path, versions);
  const pieces = piecesOf(path, [base, ours, theirs]);
  if (pieces === undefined) return compareWhole(path, versions);
  const [ofBase, ofOurs, ofTheirs] = pieces.versions;
  const inner = pieces.names.map((name) =>
    compare([...path, { in: pieces.in, name }], {
      base: ofBase?.get(name),
      ours: ofOurs?.get(name),
      theirs: ofTheirs?.get(name),
    }),
  );
  return {
    ours: inner.flatMap((one) => one.ours),
    theirs: inner.flatMap((one) => one.theirs),
    both: inner.flatMap((one) => one.both),
  };
};

/** Compares two versions of a boat with the one both come from, thing by thing and field by field. */
export const differences = (versions: Versions): Differences => compare([], versions);

/** What one version of a boat says otherwise than the one before it. */
export const differencesFrom = ({ base, now }: { base: unknown; now: unknown }): readonly Difference[] =>
  differences({ base, ours: now, theirs: base }).ours;
