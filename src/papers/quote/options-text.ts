import { readingName } from '../../core/facts/reading-words.ts';
import type { Quote } from '../../core/quote/quote-shape.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { printMoney } from '../lists/order-words.ts';
import { keepUnits, printCount } from '../lists/print-figure.ts';
import { moneyRange, printRange, type QuoteRow } from './quote-rows.ts';

const width = 80;

/** How many readings that do not arrive are named. */
const named = 6;

/** One way to go about the refit: what it is, and what it comes to. */
export interface Option {
  readonly id: string;
  readonly says: string;
  readonly quote: Quote;
}

const missingWords = ({ missing }: Quote): string => {
  const names = [...new Set(missing.map((entry) => readingName(entry)))];
  if (names.length === 0) return 'everything asked for arrives';
  const more = names.length > named ? ` and ${names.length - named} more` : '';
  return `not reached: ${names.slice(0, named).join(', ')}${more}`;
};

/** Options side by side, the cheapest at its most first; of equal ones the first given. */
export const optionRows = (options: readonly Option[]): QuoteRow[] =>
  [...options]
    .sort((a, b) => a.quote.sums.total.most - b.quote.sums.total.most)
    .map(({ id, says, quote }) => {
      const { sums, gains, keeps, currency } = quote;
      const asked = sums.unpriced === 0 ? '' : `, ${printCount(sums.unpriced, 'item')} to be asked`;
      const facts = [
        `parts ${printMoney(sums.parts)}${asked}`,
        `${printRange(sums.hoursH)} h of work`,
        `${printCount(gains.length, 'reading')} new, ${keeps} kept`,
        missingWords(quote),
      ];
      return { id, what: says, fact: facts.join('; '), money: `${moneyRange(sums.total)} ${currency}` };
    });

/** Options side by side, for a terminal. */
export const optionsText = (options: readonly Option[]): string =>
  `${[
    'SIDE BY SIDE',
    ...optionRows(options).flatMap(({ what, fact, money }) => [
      ...textLines(keepUnits(`${money}: ${what}`), { width, lead: '- ' }),
      ...textLines(keepUnits(`${fact}.`), { width, lead: '  ' }),
    ]),
  ].join('\n')}\n`;
