import type { ListTable } from '../../table/list-table.ts';
import type { Chapter } from '../binder-shape.ts';

/** Which lists make a chapter of their own; what stands in none of them comes in the last. */
const own = [
  { id: 'cables', title: 'Cable list', lists: ['cables'] },
  { id: 'pairs', title: 'Pairs, wire by wire', lists: ['pairs'] },
  { id: 'fuses', title: 'Fuses and breakers', lists: ['panels', 'feeds', 'loads'] },
] as const;

/** Lists that another chapter shows in its own way. */
const elsewhere: readonly string[] = ['settings', 'blackouts'];

const chapterOf = ({ id, title }: { id: string; title: string }, lists: readonly ListTable[]): Chapter => ({
  id,
  title,
  blocks: lists.map((table) => ({ kind: 'table', table })),
});

/** The lists of a plan in chapters: cables, pairs, fuses, then all others together. */
export const listChapters = (lists: readonly ListTable[]): { readonly first: Chapter[]; readonly rest: Chapter } => {
  const taken = new Set<string>([...own.flatMap(({ lists: ids }) => [...ids]), ...elsewhere]);
  return {
    first: own.map((chapter) =>
      chapterOf(
        chapter,
        lists.filter(({ id }) => (chapter.lists as readonly string[]).includes(id)),
      ),
    ),
    rest: chapterOf(
      { id: 'lists', title: 'Lists' },
      lists.filter(({ id }) => !taken.has(id)),
    ),
  };
};
