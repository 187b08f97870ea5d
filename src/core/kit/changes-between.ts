import { canonicalJson } from '../backbone/canonical-json.ts';
import type { Kit } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import type { Sheet } from '../boat/sheet.ts';
import { namesOf } from '../boat/sheet-changes.ts';

export type Change = NonNullable<Kit['changes']>[number];

/** A change without how it is known. */
type Difference = Omit<Change, 'how'>;

const isSame = (one: unknown, other: unknown): boolean =>
  one === other || (one !== undefined && other !== undefined && canonicalJson(one) === canonicalJson(other));

/** The entries of a list by the one name each is addressed by; undefined where one has none, several, or that of another. */
const byName = (list: readonly unknown[]): ReadonlyMap<string, unknown> | undefined => {
  const named = new Map<string, unknown>();
  for (const entry of list) {
    const [name, another] = namesOf(entry);
    if (name === undefined || another !== undefined || named.has(name)) return undefined;
    named.set(name, entry);
  }
  return named;
};

const partsOf = (value: unknown): ReadonlyMap<string, unknown> | undefined => {
  if (Array.isArray(value)) return byName(value);
  return typeof value === 'object' && value !== null ? new Map(Object.entries(value)) : undefined;
};

const below = (path: string, step: string): string => (path === '' ? step : `${path}.${step}`);

const between = (path: string, from: unknown, to: unknown): Difference[] => {
  if (isSame(from, to)) return [];
  const [before, after] = [partsOf(from), partsOf(to)];
  const isList = Array.isArray(from);
  const isWhole =
    before === undefined ||
    after === undefined ||
    isList !== Array.isArray(to) ||
    // what a list gains has no name to be addressed by yet, so the list is given whole
    (isList && [...after.keys()].some((name) => !before.has(name)));
  if (isWhole) return [{ path, value: to }];
  return [...new Set([...before.keys(), ...after.keys()])].sort(byCodeUnit).flatMap((name) => {
    const value = after.get(name);
    if (value === undefined) return before.get(name) === undefined ? [] : [{ path: below(path, name) }];
    const was = before.get(name);
    return was === undefined ? [{ path: below(path, name), value }] : between(below(path, name), was, value);
  });
};

/**
 * The changes that make one sheet of another, each as deep in it as can be. Only the id stays: it says which sheet it is.
 * Pure; made one after the other they give the other sheet but for the order of its lists.
 *
 * @example changesBetween(sheet, { ...sheet, compassSafe: { valueM: 0.3, how: 'papers' } }, 'manual')
 * // [{ path: 'compassSafe', value: { valueM: 0.3, how: 'papers' }, how: 'manual' }]
 */
export const changesBetween = (from: Sheet, to: Sheet, how: Change['how']): Change[] =>
  between('', from, { ...to, id: from.id }).map((difference) => ({ ...difference, how }));
