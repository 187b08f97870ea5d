import { indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { ListTable } from '../table/list-table.ts';
import { shoppingGroups } from './shopping-groups.ts';

/** What is carried aboard to mend with, where it is kept to be written in. */
export const spareList = (boat: Boat, plan: Plan): ListTable => ({
  id: 'spares',
  title: 'Spares aboard',
  columns: [
    { id: 'item', head: 'item', share: 2.4 },
    { id: 'count', head: 'count', share: 0.7 },
    { id: 'why', head: 'why', share: 2.4 },
    { id: 'kept', head: 'kept where', kind: 'blank', share: 1.4 },
  ],
  rows: shoppingGroups(
    indexBoat(boat),
    { ...plan, shopping: plan.shopping.filter(({ kind }) => kind === 'spare') },
    'both',
  )
    .flatMap(({ rows }) => rows)
    .map(({ item, count, why }) => [item, count, why, undefined]),
  empty: 'No spare is planned.',
});
