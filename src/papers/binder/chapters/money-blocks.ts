import type { QuoteRow } from '../../quote/quote-rows.ts';
import type { ListTable } from '../../table/list-table.ts';
import type { Block } from '../binder-shape.ts';

/** A range of money is not broken over lines. */
const onOneLine = (money: string): string => money.replaceAll(' ', '\u00A0');

/** Rows of money under a title, what they are made of beside them; nothing where there is none. */
export const moneyTable = (
  title: string,
  { rows, currency }: { rows: readonly QuoteRow[]; currency: string },
): Block[] =>
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

/** Sentences under a title; nothing where there is none. */
export const pointsUnder = (text: string, own: readonly string[]): Block[] =>
  own.length === 0
    ? []
    : [
        { kind: 'heading', text },
        { kind: 'points', points: own },
      ];
