import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { cardBoat } from '../cards/card-boat.ts';
import type { ListTable } from '../table/list-table.ts';
import { paperRows } from './paper-rows.ts';

/** Papers that are started before anything is ordered. */
export const paperList = (boat: Boat, plan: Plan): ListTable => ({
  id: 'papers-first',
  title: 'Papers before the order',
  says: 'Numbers, licences and registrations take their time, and the sets cannot be set up without them. Nine digits are read back by a second person before they are typed.',
  columns: [
    { id: 'paper', head: 'paper', share: 1.2 },
    { id: 'stands', head: 'stands', share: 1 },
    { id: 'waits', head: 'takes', share: 1.4 },
    { id: 'does', head: 'what to do', share: 2.4 },
    { id: 'for', head: 'for', share: 1.6 },
    { id: 'done', head: 'there', kind: 'tick', share: 0.4 },
  ],
  rows: paperRows(cardBoat(boat).kit, plan).map((row) => [
    row.what,
    row.stands,
    row.waits,
    row.does,
    row.for.join(', '),
    row.stands.startsWith('there') ? 'yes' : undefined,
  ]),
  empty: 'No radio and no beacon is aboard that asks for a paper.',
});
