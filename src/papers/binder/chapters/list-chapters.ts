import type { ListTable } from '../../table/list-table.ts';
import type { Block, Chapter } from '../binder-shape.ts';

/** Which lists make a chapter of their own; what stands nowhere else comes in the last. */
const own = [
  { id: 'cables', title: 'Cable list', lists: ['cables', 'tees', 'labels'] },
  { id: 'kit', title: 'Kit list', lists: ['kit'] },
  { id: 'pairs', title: 'Plugs, pairs and terminals', lists: ['pins', 'pairs', 'terminals'] },
  { id: 'fuses', title: 'Fuses and breakers', lists: ['panels', 'feeds', 'loads'] },
] as const;

/** Lists that another chapter shows, in its own way or among its own. */
const elsewhere: readonly string[] = [
  'settings',
  'settings-by-measure',
  'papers-first',
  'settings-before',
  'blackouts',
  'spares',
  'fits',
  'plates',
  'tests',
  'work',
  'order-dates',
];

/** Lists with nothing in them are told of together, a line each. */
const emptyBlocks = (lists: readonly ListTable[]): Block[] =>
  lists.length === 0
    ? []
    : [
        { kind: 'heading', text: 'Nothing to list' },
        { kind: 'points', points: lists.map(({ title, empty }) => `${title}: ${empty}`) },
      ];

const chapterOf = ({ id, title }: { id: string; title: string }, lists: readonly ListTable[]): Chapter => ({
  id,
  title,
  blocks: [
    ...lists.filter(({ rows }) => rows.length > 0).map((table): Block => ({ kind: 'table', table })),
    ...emptyBlocks(lists.filter(({ rows }) => rows.length === 0)),
  ],
});

/** Lists by their ids, in the order they have. */
export const listsOf = (lists: readonly ListTable[], ids: readonly string[]): ListTable[] =>
  lists.filter(({ id }) => ids.includes(id));

/** The lists of a plan in chapters: cables, kit, plugs, fuses, then all others together. */
export const listChapters = (lists: readonly ListTable[]): { readonly first: Chapter[]; readonly rest: Chapter } => {
  const taken = [...own.flatMap(({ lists: ids }) => [...ids]), ...elsewhere];
  return {
    first: own.map((chapter) => chapterOf(chapter, listsOf(lists, chapter.lists))),
    rest: {
      ...chapterOf(
        { id: 'lists', title: 'Lists' },
        lists.filter(({ id }) => !taken.includes(id)),
      ),
      isIndexed: false,
    },
  };
};
