import type { Quote } from '../../core/quote/quote-shape.ts';
import { kindTitles } from '../lists/shopping-groups.ts';
import type { ListTable } from '../table/list-table.ts';

/** The parts of a quote, a row an item and phase. */
export const quoteParts = ({ parts, currency }: Quote): ListTable => ({
  id: 'quote-parts',
  title: 'Parts of the quote',
  columns: [
    { id: 'phase', head: 'phase', share: 0.6 },
    { id: 'kind', head: 'kind' },
    { id: 'item', head: 'item', share: 3 },
    { id: 'count', head: 'count', kind: 'figure' },
    { id: 'by', head: 'by' },
    { id: 'each', head: 'each', kind: 'figure', digits: 2 },
    { id: 'sum', head: 'sum', kind: 'figure', digits: 2 },
    { id: 'currency', head: 'currency' },
    { id: 'item-id', head: 'item id', kind: 'label', printed: false },
  ],
  rows: parts.map(({ phase, kind, item, count, by, each, id }) => [
    String(phase),
    kindTitles[kind],
    item,
    count,
    by,
    each === undefined ? undefined : each / 100,
    each === undefined ? undefined : Math.round(count * each) / 100,
    currency,
    id,
  ]),
  empty: 'Nothing is to be bought.',
});
