import { type Boat, type Order, orderStates } from '../../core/boat/boat-schema.ts';
import type { EditCall } from '../../core/boat/history.ts';
import type { Plan, ShoppingEntry } from '../../core/plan-shape.ts';
import { currencyOf } from '../lists/cure-words.ts';
import { printMoney } from '../lists/order-words.ts';
import { readChoice, readName, readNumber } from './read-cell.ts';
import type { BoatTable, CellChoice, Put, TableRow } from './table-shape.ts';

const stateSays: Readonly<Record<Order['state'], string>> = {
  have: 'at hand',
  order: 'to order',
  ordered: 'ordered',
  arrived: 'arrived',
  returned: 'sent back',
};

const states: readonly (CellChoice & { readonly value: Order['state'] })[] = orderStates.map((value) => ({
  value,
  says: stateSays[value],
}));

type Field = 'count' | 'supplier' | 'leadDays' | 'orderBy';

const noted = (item: string, params: Omit<Order, 'item' | 'state'> & { readonly state?: Order['state'] }): Put => ({
  edits: [{ edit: 'note-order', params: { item, ...params } }],
});

/** What an empty cell means: it is no longer said, where it was. */
const forgotten = (order: Order | undefined, item: string, field: Field): Put =>
  order?.[field] === undefined ? { edits: [] } : { edits: [{ edit: 'note-order', params: { item, forget: [field] } }] };

const day = /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/;

const readCount = (text: string, { count, by }: ShoppingEntry) => {
  const read = readNumber(text, { unit: by === 'metre' ? 'm' : '', least: 0, most: 100_000 });
  return 'wrong' in read ? read : { value: read.value === count ? undefined : read.value };
};

const priced = (item: string, text: string, isOwn: boolean): Put => {
  const one = (each?: number): Put => ({
    edits: [
      { edit: 'set-price', params: { of: 'item', item, ...(each === undefined ? {} : { each }) } } satisfies EditCall,
    ],
  });
  if (text.trim() === '') return isOwn ? one() : { edits: [] };
  const read = readNumber(text, { unit: '', least: 0, most: 10_000_000 });
  return 'wrong' in read ? read : one(Math.round(read.value * 100));
};

/** What a text put into each column makes of the order of one item. */
const puts: Readonly<Record<string, (boat: Boat, entry: ShoppingEntry, text: string) => Put>> = {
  count: (boat, entry, text) => {
    const read = text.trim() === '' ? { value: undefined } : readCount(text, entry);
    if ('wrong' in read) return read;
    return read.value === undefined
      ? forgotten(orderOf(boat, entry.id), entry.id, 'count')
      : noted(entry.id, { count: read.value });
  },
  each: (boat, { id }, text) => priced(id, text, Object.hasOwn(boat.prices?.items ?? {}, id)),
  state: (_, { id }, text) => {
    const read = readChoice(text, states);
    return 'wrong' in read ? read : noted(id, { state: read.value });
  },
  supplier: (boat, { id }, text) => {
    if (text.trim() === '') return forgotten(orderOf(boat, id), id, 'supplier');
    const read = readName(text);
    return 'wrong' in read ? read : noted(id, { supplier: read.value });
  },
  leadDays: (boat, { id }, text) => {
    if (text.trim() === '') return forgotten(orderOf(boat, id), id, 'leadDays');
    const read = readNumber(text.replace(/\s*days?$/i, ''), { unit: '', least: 0, most: 2000 });
    if ('wrong' in read) return read;
    return noted(id, { leadDays: Math.ceil(read.value) });
  },
  orderBy: (boat, { id }, text) => {
    const asked = text.trim();
    if (asked === '') return forgotten(orderOf(boat, id), id, 'orderBy');
    if (!day.test(asked)) return { wrong: `“${asked}” is no day. Write year-month-day, for example 2027-03-31.` };
    return noted(id, { orderBy: asked });
  },
};

const orderOf = ({ orders = [] }: Boat, item: string): Order | undefined => orders.find((own) => own.item === item);

const rowOf = (boat: Boat, entry: ShoppingEntry): TableRow => {
  const order = orderOf(boat, entry.id);
  const count = order?.count ?? entry.count;
  const each = boat.prices?.items?.[entry.id] ?? entry.each;
  return {
    id: entry.id,
    cells: {
      item: entry.item,
      count: entry.by === 'metre' ? `${count} m` : String(count),
      each: each === undefined ? '' : printMoney(each),
      state: stateSays[order?.state ?? 'order'],
      supplier: order?.supplier ?? '',
      leadDays: order?.leadDays === undefined ? '' : String(order.leadDays),
      orderBy: order?.orderBy ?? '',
    },
    sortsBy: {
      count,
      ...(each === undefined ? {} : { each }),
      ...(order?.leadDays === undefined ? {} : { leadDays: order.leadDays }),
    },
  };
};

/** The shopping list: how many of each item, what one costs, where it stands, from whom, and how long it takes to come. */
export const orderTable = (boat: Boat, { shopping }: Pick<Plan, 'shopping'>): BoatTable => ({
  id: 'order',
  says: 'order',
  columns: [
    { id: 'item', says: 'item', isFixed: true },
    { id: 'count', says: 'count', isFigure: true, hint: '6' },
    { id: 'each', says: `each, ${currencyOf(boat)}`, isFigure: true, hint: '22.00' },
    { id: 'state', says: 'where it stands', choices: states },
    { id: 'supplier', says: 'supplier', hint: 'Harbour Supplies' },
    { id: 'leadDays', says: 'days to come', isFigure: true, hint: '14' },
    { id: 'orderBy', says: 'order by', hint: '2027-03-31' },
  ],
  rowsOf: (now) => shopping.map((entry) => rowOf(now, entry)),
  put: (now, { row, column }, text) => {
    const entry = shopping.find(({ id }) => id === row);
    const put = puts[column];
    if (entry === undefined || put === undefined)
      return { wrong: 'The plan says what is bought: it is changed aboard.' };
    return put(now, entry, text);
  },
});
