import type { Boat } from '../../../core/boat/boat-schema.ts';
import { cardBoat } from '../../cards/card-boat.ts';
import type { ListTable } from '../../table/list-table.ts';
import type { Block, Chapter } from '../binder-shape.ts';

/** Headings of a card, degrees. */
const stepDeg = 15;

const compassKinds: ReadonlySet<string | undefined> = new Set(['steering-compass', 'heading-sensor']);

const headings = Array.from({ length: 360 / stepDeg }, (_, at) => at * stepDeg);

const cardTable = (id: string, title: string): ListTable => ({
  id,
  title,
  columns: [
    { id: 'heading', head: 'magnetic °', kind: 'figure' },
    { id: 'reads', head: 'compass reads °', kind: 'blank' },
    { id: 'deviation', head: 'deviation ° E or W', kind: 'blank' },
    { id: 'other', head: 'magnetic °', kind: 'figure' },
    { id: 'other-reads', head: 'compass reads °', kind: 'blank' },
    { id: 'other-deviation', head: 'deviation ° E or W', kind: 'blank' },
  ],
  rows: headings
    .slice(0, headings.length / 2)
    .map((heading) => [heading, undefined, undefined, heading + 180, undefined, undefined]),
  empty: '',
});

/** A card to fill in for each compass and each heading sensor that is aboard when the work is done. */
export const deviationChapter = (boat: Boat): Chapter => {
  const { sheetOf } = cardBoat(boat);
  const compasses = boat.kit.filter(({ id, fate }) => fate !== 'goes' && compassKinds.has(sheetOf.get(id)?.kind));
  return {
    id: 'deviation',
    title: 'Deviation cards',
    blocks: [
      {
        kind: 'words',
        text: 'Swing each compass in open water, everything switched on as at sea, iron and phones stowed. Magnetic minus compass is the deviation: E where it is positive. Swing again after any change near a compass.',
      },
      ...(compasses.length === 0
        ? [{ kind: 'words', text: 'No compass and no heading sensor is in the boat file.' } satisfies Block]
        : compasses.flatMap(({ id, name }): Block[] => [
            { kind: 'table', isWhole: true, table: cardTable(`deviation-${id}`, name) },
            { kind: 'blanks', blanks: ['Swung on, where, by whom'] },
          ])),
    ],
  };
};
