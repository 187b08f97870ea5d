import type { Boat } from '../boat-schema.ts';
import { applyDifferences, withoutEmpty } from './apply-differences.ts';
import { type Clash, type Difference, differences } from './differences.ts';
import type { MergePath } from './merge-parts.ts';

/** Which version a person wants of something that both changed. */
export type MergeChoice = 'ours' | 'theirs';

/** Something that only a person can decide, by a key that stays the same while it is undecided. */
export interface MergeConflict extends Clash {
  readonly key: string;
  /** what does not fit the version that was taken first; only in the one conflict about all that does not fit together */
  readonly left?: readonly Difference[];
}

export interface Merge {
  /** a good boat: everything that does not clash from both, and what was chosen; ours where nothing was */
  readonly boat: Boat;
  readonly conflicts: readonly MergeConflict[];
}

/** The key of the conflict about changes that clash with nothing by themselves but make no good boat together. */
export const togetherKey = 'together';

/** The key of something in a boat: where it stands, in words. */
export const mergeKey = (path: MergePath): string => path.map(({ name }) => name).join('/');

const asChange = (path: MergePath, value: unknown): Difference => ({ path, ...(value === undefined ? {} : { value }) });

/**
 * Puts together two versions of a boat that come from one: things by their ids, fields by their names. What only one
 * changed is taken from it; what both changed in different ways is a conflict, decided by `choices`, by `ours` where
 * there is no choice. Changes that would break what they meet, such as a need at a screen that the other took out, are
 * one conflict together: the version chosen for it is taken first, and of the other what fits. The boat can always be
 * saved and read again.
 *
 * @example mergeBoats({ base, ours, theirs, choices: { 'kit/gnss/place': 'theirs' } })
 */
export const mergeBoats = ({
  base,
  ours,
  theirs,
  choices = {},
}: {
  readonly base: Boat;
  readonly ours: Boat;
  readonly theirs: Boat;
  readonly choices?: Readonly<Partial<Record<string, MergeChoice>>>;
}): Merge => {
  const found = differences({ base, ours, theirs });
  const both = found.both.map((clash) => ({ key: mergeKey(clash.path), ...clash }));
  if (both.length === 0 && found.ours.length === 0) return { boat: theirs, conflicts: [] };
  if (both.length === 0 && found.theirs.length === 0) return { boat: ours, conflicts: [] };
  const from = (side: MergeChoice): readonly Difference[] => [
    ...found[side],
    ...both.filter(({ key }) => (choices[key] ?? 'ours') === side).map((clash) => asChange(clash.path, clash[side])),
  ];
  const first = choices[togetherKey] ?? 'ours';
  const made = first === 'ours' ? applyDifferences(ours, from('theirs')) : applyDifferences(theirs, from('ours'));
  const left = made.left.length === 0 ? [] : [{ key: togetherKey, path: [], left: made.left }];
  return { boat: withoutEmpty(made.boat, { ours, theirs }), conflicts: [...both, ...left] };
};
