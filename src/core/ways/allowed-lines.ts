import type { LineKind, Way } from '../boat/boat-schema.ts';

/**
 * Whether a way takes a kind of line: what its `allows` says; a way without `allows` takes every kind.
 * That default is a project choice: a boat is entered before anybody has thought about every pipe.
 */
export const allowsLine = (way: Pick<Way, 'allows'>, kind: LineKind): boolean => way.allows?.includes(kind) ?? true;

/**
 * How often the trunk may run through a way: not at all where trunk is not allowed, as often as `trunkTimes` says, else
 * once in a mast or a gland, where one more cable can seldom be drawn, and twice (out and back) anywhere else.
 * Whether the bore takes it is for the fill of the way to say.
 */
export const trunkTimes = (way: Pick<Way, 'allows' | 'trunkTimes' | 'kind'>): 0 | 1 | 2 => {
  if (!allowsLine(way, 'trunk')) return 0;
  return way.trunkTimes ?? (way.kind === 'mast' || way.kind === 'gland' ? 1 : 2);
};
