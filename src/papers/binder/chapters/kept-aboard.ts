import type { Boat } from '../../../core/boat/boat-schema.ts';
import { cardBoat } from '../../cards/card-boat.ts';
import type { ListTable } from '../../table/list-table.ts';
import type { Block, Chapter } from '../binder-shape.ts';

const shows = { front: 'front', back: 'back', label: 'type plate', other: 'as it lies' } as const;

const nameOf = (boat: Boat): ((id: string) => string) => {
  const { kit, places, ways } = cardBoat(boat);
  const way = (id: string): string =>
    ways
      .get(id)
      ?.ends.map((end) => places.get(end)?.name ?? end)
      .join(' to ') ?? id;
  return (id) => kit.get(id)?.name ?? places.get(id)?.name ?? way(id);
};

/** Photos by what they are of: what is kept, and what it shows. */
const photoTable = (boat: Boat): ListTable => {
  const name = nameOf(boat);
  const byThing = new Map<string, string[]>();
  for (const photo of boat.photos ?? []) byThing.set(photo.of, [...(byThing.get(photo.of) ?? []), shows[photo.shows]]);
  return {
    id: 'photos',
    title: 'Photos',
    says: 'Pictures kept with the boat file. Take one behind every panel before it is shut.',
    columns: [
      { id: 'of', head: 'of', share: 2 },
      { id: 'shows', head: 'shows' },
      { id: 'count', head: 'how many', kind: 'figure' },
    ],
    rows: [...byThing].map(([of, shown]) => [name(of), [...new Set(shown)].join(', '), shown.length]),
    empty: 'No photo is kept with the boat file yet. Take one of every plug, plate and opened panel.',
  };
};

const stays = (boat: Boat) => boat.kit.filter(({ fate }) => fate !== 'goes');

const manualTable = (boat: Boat): ListTable => ({
  id: 'manuals',
  title: 'Manuals and templates',
  says: 'Tick what is in the folder aboard. A template is the maker’s outline for the hole.',
  columns: [
    { id: 'unit', head: 'unit', share: 2 },
    { id: 'manual', head: 'manual', kind: 'tick' },
    { id: 'template', head: 'template', kind: 'tick' },
    { id: 'guarantee', head: 'receipt', kind: 'tick' },
    { id: 'where', head: 'where it is kept', kind: 'blank', share: 1.4 },
  ],
  rows: stays(boat).map(({ name }) => [name, undefined, undefined, undefined, undefined]),
  empty: 'No unit is in the boat file yet.',
});

/** What is kept aboard besides these sheets: photos, manuals and templates, spares. */
export const keptAboardChapter = (boat: Boat, spares: readonly ListTable[]): Chapter => ({
  id: 'kept',
  title: 'Kept aboard',
  isIndexed: false,
  blocks: [photoTable(boat), manualTable(boat), ...spares].map((table): Block => ({ kind: 'table', table })),
});
