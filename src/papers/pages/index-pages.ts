import { byCodeUnit } from '../../core/units/by-code-unit.ts';
import type { Binder, Chapter } from '../binder/binder-shape.ts';
import type { ListTable } from '../table/list-table.ts';

/** What stands on one page of one chapter. */
export interface Mention {
  readonly page: number;
  readonly chapter: string;
  readonly says: readonly string[];
  readonly about: readonly string[];
}

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** Finds names in words; where one name holds another, the longer one counts. */
const finder = (names: readonly string[]): ((text: string) => string[]) => {
  const sorted = [...new Set(names)].filter((name) => name !== '').sort((a, b) => b.length - a.length);
  if (sorted.length === 0) return () => [];
  const pattern = new RegExp(`(?<![\\p{L}\\p{N}])(?:${sorted.map(escaped).join('|')})(?![\\p{L}\\p{N}])`, 'gu');
  return (text) => text.match(pattern) ?? [];
};

/** Pages in order, runs of three and more drawn together: "4, 7–9, 12". */
export const pageRuns = (pages: readonly number[]): string => {
  const sorted = [...new Set(pages)].sort((a, b) => a - b);
  const runs: [first: number, last: number][] = [];
  for (const page of sorted) {
    const run = runs.at(-1);
    if (run !== undefined && run[1] === page - 1) run[1] = page;
    else runs.push([page, page]);
  }
  return runs
    .map(([first, last]) =>
      first === last ? `${first}` : last === first + 1 ? `${first}, ${last}` : `${first}–${last}`,
    )
    .join(', ');
};

type Found = ReadonlyMap<string, ReadonlyMap<string, readonly number[]>>;

/** For each name, the pages it stands on, by chapter. */
const findAll = (binder: Binder, mentions: readonly Mention[]): Found => {
  const names = [...binder.devices, ...binder.places];
  const nameOf = new Map(names.map(({ id, name }) => [id, name]));
  const wholeOf = new Map(names.flatMap(({ name, brief }) => [[brief, name] as const, [name, name] as const]));
  const find = finder([...wholeOf.keys()]);
  const found = new Map<string, Map<string, number[]>>();
  for (const { page, chapter, says, about } of mentions) {
    const here = new Set([
      ...says.flatMap(find).flatMap((name) => wholeOf.get(name) ?? []),
      ...about.flatMap((id) => nameOf.get(id) ?? []),
    ]);
    for (const name of here) {
      const own = found.get(name) ?? new Map<string, number[]>();
      own.set(chapter, [...(own.get(chapter) ?? []), page + 1]);
      found.set(name, own);
    }
  }
  return found;
};

const whereWords = (chapters: ReadonlyMap<string, readonly number[]> | undefined): string =>
  chapters === undefined
    ? ''
    : [...chapters]
        .map(([chapter, pages]) => `${chapter}\u00a0${pageRuns(pages).replaceAll(' ', '\u00a0')}`)
        .join(' · ');

const indexTable = (
  { id, title, head }: { id: string; title: string; head: string },
  things: Binder['devices'],
  found: Found,
): ListTable => ({
  id,
  title,
  columns: [
    { id: 'name', head },
    { id: 'pages', head: 'chapter and sheets', share: 3 },
  ],
  rows: [...new Set(things.map(({ name }) => name))]
    .filter((name) => found.has(name))
    .sort((a, b) => byCodeUnit(a.toLowerCase(), b.toLowerCase()))
    .map((name) => [name, whereWords(found.get(name))]),
  empty: 'Nothing is named.',
});

/** The index by device and by place, made of what stands on the pages before it. */
export const indexChapter = (binder: Binder, mentions: readonly Mention[]): Chapter => {
  const found = findAll(binder, mentions);
  return {
    id: 'index',
    title: 'Index',
    blocks: [
      {
        kind: 'table',
        table: indexTable({ id: 'index-devices', title: 'By device', head: 'device' }, binder.devices, found),
      },
      {
        kind: 'table',
        table: indexTable({ id: 'index-places', title: 'By place', head: 'place' }, binder.places, found),
      },
    ],
  };
};
