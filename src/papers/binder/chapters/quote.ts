import type { Boat } from '../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../core/plan-shape.ts';
import type { Quote } from '../../../core/quote/quote-shape.ts';
import { quoteRows } from '../../quote/quote-rows.ts';
import type { Chapter } from '../binder-shape.ts';
import { moneyTable, pointsUnder } from './money-blocks.ts';

/** The quote to hand over and to sign: what one gets and loses, what it costs, what is not in it and what may change it. */
export const quoteChapter = (boat: Boat, plan: Plan, quote: Quote): Chapter => {
  const rows = quoteRows(boat, plan, quote);
  const { currency } = quote;
  return {
    id: 'quote',
    title: `New electronics for ${boat.name}`,
    isIndexed: false,
    blocks: [
      { kind: 'heading', text: rows.total },
      { kind: 'words', text: `${rows.standing} ${rows.validity}` },
      { kind: 'blanks', blanks: ['From', 'For', 'Date'] },
      ...moneyTable('Together', { rows: rows.sums, currency }),
      ...moneyTable('In phases', { rows: rows.phases, currency }),
      ...pointsUnder('What you get', rows.gets),
      ...pointsUnder('What you lose', rows.loses),
      ...moneyTable('Parts', { rows: rows.parts, currency }),
      ...moneyTable('Work', {
        rows: rows.hours.map((row) => ({
          ...row,
          what: `${row.count} × ${row.what}`,
          fact: `${row.hours}. ${row.fact}`,
        })),
        currency,
      }),
      ...pointsUnder('Not in it', rows.exclusions),
      ...moneyTable('What may change it', { rows: rows.mayChange, currency }),
      ...pointsUnder('Terms', quote.terms === undefined ? [] : [quote.terms]),
      { kind: 'blanks', blanks: ['Place, date, for the work', 'Place, date, the owner'] },
    ],
  };
};
