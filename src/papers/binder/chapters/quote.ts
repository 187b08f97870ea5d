import type { Boat } from '../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../core/plan-shape.ts';
import type { Quote } from '../../../core/quote/quote-shape.ts';
import { type QuoteRow, quoteRows } from '../../quote/quote-rows.ts';
import type { ListTable } from '../../table/list-table.ts';
import type { Block, Chapter } from '../binder-shape.ts';

/** A range of money is not broken over lines. */
const onOneLine = (money: string): string => money.replaceAll(' ', '\u00A0');

const moneyTable = (title: string, { rows, currency }: { rows: readonly QuoteRow[]; currency: string }): Block[] =>
  rows.length === 0
    ? []
    : [
        {
          kind: 'table',
          table: {
            id: title.toLowerCase().replaceAll(' ', '-'),
            title,
            columns: [
              { id: 'what', head: 'what', share: 2 },
              { id: 'fact', head: 'made of', share: 2.4 },
              { id: 'money', head: currency, kind: 'figure', share: 1.2 },
            ],
            rows: rows.map(({ what, fact, money }) => [what, fact, onOneLine(money)]),
            empty: '',
          } satisfies ListTable,
        },
      ];

const points = (text: string, own: readonly string[]): Block[] =>
  own.length === 0
    ? []
    : [
        { kind: 'heading', text },
        { kind: 'points', points: own },
      ];

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
      ...points('What you get', rows.gets),
      ...points('What you lose', rows.loses),
      ...moneyTable('Parts', { rows: rows.parts, currency }),
      ...moneyTable('Work', {
        rows: rows.hours.map((row) => ({
          ...row,
          what: `${row.count} × ${row.what}`,
          fact: `${row.hours}. ${row.fact}`,
        })),
        currency,
      }),
      ...points('Not in it', rows.exclusions),
      ...moneyTable('What may change it', { rows: rows.mayChange, currency }),
      ...points('Terms', quote.terms === undefined ? [] : [quote.terms]),
      { kind: 'blanks', blanks: ['Place, date, for the work', 'Place, date, the owner'] },
    ],
  };
};
