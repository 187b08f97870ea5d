import type { ReactNode } from 'react';
import type { QuoteRow } from '../../../../../papers/quote/quote-rows.ts';

/** Lines with their money at the right, what each is made of below. */
export const QuoteLines = ({ rows }: { rows: readonly QuoteRow[] }): ReactNode => (
  <ul className="quote-lines">
    {rows.map(({ id, what, fact, money }) => (
      <li key={id} className={id === 'total' ? 'quote-total' : undefined}>
        <p className="quote-line">
          <span>{what}</span>
          <span className="quote-money">{money}</span>
        </p>
        {fact === '' ? null : <p className="quiet">{fact}</p>}
      </li>
    ))}
  </ul>
);
