import type { Boat } from '../../core/boat/boat-schema.ts';
import { differencesFrom } from '../../core/boat/merge/differences.ts';
import type { MergeConflict } from '../../core/boat/merge/merge-boats.ts';
import type { MergePath } from '../../core/boat/merge/merge-parts.ts';
import { shortName } from '../../core/boat/short-name.ts';

const thingWords: ReadonlyMap<string, string> = new Map([
  ['places', 'place'],
  ['ways', 'way'],
  ['cables', 'cable'],
  ['sheets', 'sheet'],
  ['kit', 'unit'],
  ['needs', 'need'],
  ['sources', 'source'],
  ['buses', 'bus'],
  ['joins', 'join'],
  ['days', 'day'],
  ['openings', 'opening'],
  ['orders', 'order'],
  ['accepted', 'accepted finding'],
  ['fitted', 'difference as fitted'],
  ['revisions', 'revision'],
  ['labels', 'label'],
  ['limits', 'limit'],
  ['banks', 'bank'],
  ['panels', 'panel'],
  ['dcdc', 'DC converter'],
  ['chargers', 'charger'],
]);

const fieldWords: ReadonlyMap<string, string> = new Map([
  ['xM', 'where it is'],
  ['yM', 'where it is'],
  ['zM', 'where it is'],
  ['fate', 'stays, goes or comes'],
  ['known', 'how well it is known'],
  ['tail', 'length of its lead'],
  ['hull', 'the hull'],
  ['pins', 'settled'],
  ['layouts', 'layout'],
  ['routes', 'route'],
  ['wires', 'wire'],
  ['fuses', 'fuse'],
]);

/** `lengthM` as "length", `nominalV` as "nominal": the name of a field as it is said. */
const fieldName = (field: string): string =>
  fieldWords.get(field) ??
  field.replace(/(?<=[a-z])(M|Mm|Mm2|V|A|Ah|Ms|Pct|Kg)$/, '').replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

const named = (value: unknown): string | undefined =>
  typeof value === 'object' && value !== null && 'name' in value && typeof value.name === 'string'
    ? shortName(value.name)
    : undefined;

/** What things of these versions are called, by their ids; the later version names a thing of both. */
const namesIn = (versions: readonly Boat[]): ReadonlyMap<string, string> =>
  new Map(
    versions.flatMap((boat) => [
      ...[boat.places, boat.kit, boat.buses, boat.sheets, boat.days ?? [], boat.openings ?? []].flatMap((list) =>
        list.map((entry) => [entry.id, named(entry) ?? entry.id] as const),
      ),
      ...boat.ways.map(({ id, ends: [a, b] }) => {
        const end = (place: string): string => boat.places.find((entry) => entry.id === place)?.name ?? place;
        return [id, `${end(a)} to ${end(b)}`] as const;
      }),
    ]),
  );

/** The thing a path leads to, and where in it; a path ends at the thing where all of it changed. */
const thingOf = (path: MergePath, names: ReadonlyMap<string, string>): { thing: string; field?: string } => {
  const at = path.findIndex((step) => step.in === 'list');
  if (at < 0) {
    const [first, ...rest] = path.map(({ name }) => name);
    const list = thingWords.get(first ?? '');
    if (list !== undefined && rest[0] !== undefined) return { thing: `${list} ${rest[0]}` };
    return { thing: [fieldName(first ?? ''), ...rest.map(fieldName)].join(first === 'pins' ? ' ' : ', ') };
  }
  const list = path[at - 1]?.name ?? '';
  const key = path[at]?.name ?? '';
  const rest = path.slice(at + 1).map(({ name }) => fieldName(name));
  const [reading = '', , screen = ''] = key.split(' ');
  const name =
    list === 'needs' || list === 'sources'
      ? `${thingWords.get(list)} of ${reading.replaceAll('-', ' ')}${screen === '' ? '' : ` at ${names.get(screen) ?? screen}`}`
      : (names.get(key) ?? `${thingWords.get(list) ?? list} ${key}`);
  return { thing: name, ...(rest.length === 0 ? {} : { field: rest.join(' ') }) };
};

interface Thing {
  readonly fields: Set<string>;
  whole?: 'came' | 'went';
}

const thingsChanged = (before: Boat, after: Boat): ReadonlyMap<string, Thing> => {
  const names = namesIn([before, after]);
  const things = new Map<string, Thing>();
  for (const { path, value } of differencesFrom({ base: before, now: after })) {
    const { thing, field } = thingOf(path, names);
    const entry = things.get(thing) ?? { fields: new Set() };
    if (field !== undefined) entry.fields.add(field);
    else if (path.at(-1)?.in === 'list') entry.whole = value === undefined ? 'went' : 'came';
    things.set(thing, entry);
  }
  return things;
};

const wholeWords = { came: 'added', went: 'taken out' } as const;

/**
 * What one version of a boat says otherwise than the one before it, thing by thing; the first `most` things, then how
 * many more. Nothing for equal boats.
 *
 * @example "GNSS on the stern rail: place. Helm dash to mast base: length. Old radio: taken out."
 */
export const boatChangeWords = (
  { before, after }: { readonly before: Boat; readonly after: Boat },
  most = 4,
): string => {
  const things = [...thingsChanged(before, after)];
  const words = things.slice(0, most).map(([thing, { fields, whole }]) => {
    const says = whole === undefined ? [...fields].join(', ') : wholeWords[whole];
    const named = `${thing.slice(0, 1).toUpperCase()}${thing.slice(1)}`;
    return says === '' ? `${named}.` : `${named}: ${says}.`;
  });
  const more = things.length - words.length;
  return [...words, ...(more > 0 ? [`And ${more} more.`] : [])].join(' ');
};

const valueWords = (value: unknown, names: ReadonlyMap<string, string>): string => {
  if (value === undefined) return 'not there';
  if (typeof value === 'string') return names.get(value) ?? value;
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number') return String(value);
  if (Array.isArray(value))
    return value
      .map((one) => valueWords(one, names))
      .join(', ')
      .slice(0, 80);
  if (typeof value !== 'object' || value === null) return String(value);
  if ('valueM' in value && 'how' in value) return `${String(value.valueM)} m, ${String(value.how)}`;
  return (
    named(value) ??
    Object.values(value)
      .map((one) => valueWords(one, names))
      .join(', ')
      .slice(0, 80)
  );
};

/** A conflict as it is put to a person: what it is about, and what each version says. */
export interface ConflictWords {
  readonly key: string;
  readonly about: string;
  readonly ours: string;
  readonly theirs: string;
}

/** Puts conflicts of a merge into words; `ours` and `theirs` are the two versions. */
export const conflictWords = (
  conflicts: readonly MergeConflict[],
  { ours, theirs }: { readonly ours: Boat; readonly theirs: Boat },
): readonly ConflictWords[] => {
  const names = namesIn([theirs, ours]);
  return conflicts.map(({ key, path, left, ours: mine, theirs: other }) => {
    if (left !== undefined) {
      const about = left.map((one) => thingOf(one.path, names).thing);
      return {
        key,
        about: `What does not fit together: ${[...new Set(about)].slice(0, 3).join(', ')}`,
        ours: 'as it is here',
        theirs: 'as it is in the file',
      };
    }
    const { thing, field } = thingOf(path, names);
    const about = field === undefined ? thing : `${thing}: ${field}`;
    return { key, about, ours: valueWords(mine, names), theirs: valueWords(other, names) };
  });
};
