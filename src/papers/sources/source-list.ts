import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { cardBoat } from '../cards/card-boat.ts';
import type { ListTable } from '../table/list-table.ts';
import { sourceRows } from './source-rows.ts';

/** The source plan, a row for each reading at each screen. */
export const sourceList = (boat: Boat, plan: Plan): ListTable => ({
  id: 'sources',
  title: 'Where each reading comes from',
  columns: [
    { id: 'reading', head: 'reading', share: 1.2, once: true },
    { id: 'screen', head: 'screen', share: 1.4 },
    { id: 'from', head: 'from', share: 1.4 },
    { id: 'how', head: 'how it comes', share: 1.8 },
    { id: 'why', head: 'why', share: 1.6 },
    { id: 'stands-by', head: 'stands by', share: 1.8 },
    { id: 'choice', head: 'on the screen', share: 0.9 },
  ],
  rows: sourceRows({ ...cardBoat(boat), boat }, plan).flatMap((row) =>
    row.screens.map(({ name }) => [
      row.what,
      name,
      row.first.name,
      row.first.says,
      row.why,
      row.standBy.map((offer) => offer.name).join('; '),
      row.isChoice ? 'choose on the screen' : undefined,
    ]),
  ),
  empty: 'Nothing that is needed arrives yet.',
});
