import { indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { ListTable } from '../table/list-table.ts';
import { currencyOf } from './cure-words.ts';
import { someWords } from './order-words.ts';
import { shoppingGroups } from './shopping-groups.ts';
import { orderSum } from './shopping-list.ts';

/** What an item is for is named so far where it is printed; an item for all feeds would fill pages. */
const namedFor = 2;

const money = (hundredths: number | undefined): number | undefined =>
  hundredths === undefined ? undefined : hundredths / 100;

/** Everything to buy, a row an item, with everything it is for. */
export const buyingList = (boat: Boat, plan: Plan): ListTable => ({
  id: 'shopping',
  title: 'Shopping list',
  says: plan.shopping.length === 0 ? '' : `${orderSum(boat, plan)} Cable covers the longest each line could be.`,
  columns: [
    { id: 'kind', head: 'kind', once: true },
    { id: 'item', head: 'item', share: 2.6 },
    { id: 'count', head: 'count', kind: 'figure', share: 0.7 },
    { id: 'by', head: 'by', share: 0.7 },
    { id: 'each', head: 'each', kind: 'figure', digits: 2, share: 0.9 },
    { id: 'sum', head: 'sum', kind: 'figure', digits: 2, share: 0.9 },
    { id: 'currency', head: 'currency', printed: false },
    { id: 'for', head: 'for', share: 3 },
    { id: 'for-all', head: 'for, each', printed: false },
    { id: 'why', head: 'why', printed: false },
    { id: 'sure', head: 'sure', share: 1.6 },
    { id: 'order', head: 'order', share: 1.2 },
    { id: 'item-id', head: 'item id', kind: 'label', printed: false },
  ],
  rows: shoppingGroups(indexBoat(boat), plan, 'both').flatMap(({ title, rows }) =>
    rows.map((row) => [
      title,
      row.item,
      row.amount,
      row.by,
      money(plan.shopping.find(({ id }) => id === row.id)?.each),
      money(row.sum),
      currencyOf(boat),
      someWords(row.for, namedFor),
      someWords(row.for, row.for.length),
      row.why,
      row.sure,
      row.stands,
      row.id,
    ]),
  ),
  empty: 'Nothing is to be bought.',
});
