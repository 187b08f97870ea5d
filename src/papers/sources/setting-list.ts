import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { cardBoat } from '../cards/card-boat.ts';
import type { ListTable } from '../table/list-table.ts';
import { settingUnits } from './setting-rows.ts';

/** What to set in each unit, a row a setting, with room for what stood there before. */
export const settingList = (boat: Boat, plan: Plan): ListTable => ({
  id: 'settings',
  title: 'Settings',
  says: 'Change one thing, look at every screen, then the next; write down what stood there before.',
  columns: [
    { id: 'unit', head: 'unit', share: 1.6, once: true },
    { id: 'place', head: 'place', share: 1.2, once: true },
    { id: 'port', head: 'port', kind: 'label', share: 0.7 },
    { id: 'what', head: 'what', share: 2 },
    { id: 'to', head: 'set to', share: 1.2 },
    { id: 'how', head: 'how', share: 1.6 },
    { id: 'for', head: 'for whom', share: 1.6 },
    { id: 'before', head: 'stood before', kind: 'blank' },
    { id: 'done', head: 'done', kind: 'tick', share: 0.5 },
  ],
  rows: settingUnits(cardBoat(boat), plan).flatMap(({ name, place, rows }) =>
    rows.map(({ port, what, to, more, forWhom }) => [name, place, port, what, to, more, forWhom, undefined, undefined]),
  ),
  empty: 'Nothing has to be set in any unit.',
});
