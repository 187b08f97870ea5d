import type { Boat } from '../../../core/boat/boat-schema.ts';
import type { ChangeOrder } from '../../../core/quote/change-order.ts';
import { changeRows } from '../../quote/change-order-text.ts';
import type { Chapter } from '../binder-shape.ts';
import { moneyTable, pointsUnder } from './money-blocks.ts';

/** A change order to hand over and to sign: what changes against before, item by item and task by task, and what it costs. */
export const changeOrderChapter = (
  boats: { readonly before: Boat; readonly after: Boat },
  order: ChangeOrder,
): Chapter => {
  const rows = changeRows(boats, order);
  const { currency } = order;
  const isEmpty = [rows.says, rows.items, rows.hours].every((list) => list.length === 0);
  return {
    id: 'change-order',
    title: `Change order for ${boats.after.name}`,
    isIndexed: false,
    blocks: isEmpty
      ? [{ kind: 'words', text: 'Nothing changes.' }]
      : [
          { kind: 'heading', text: rows.total },
          { kind: 'words', text: 'Against what was quoted before. A minus is less.' },
          { kind: 'blanks', blanks: ['To quote of', 'Date'] },
          ...moneyTable('Together', { rows: rows.sums, currency }),
          ...pointsUnder('What changes', rows.says),
          ...moneyTable('Parts', { rows: rows.items, currency }),
          ...moneyTable('Work', { rows: rows.hours, currency }),
          { kind: 'blanks', blanks: ['Place, date, for the work', 'Place, date, the owner'] },
        ],
  };
};
