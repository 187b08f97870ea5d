import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { Quote } from '../../core/quote/quote-shape.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { keepUnits } from '../lists/print-figure.ts';
import { type QuoteRow, quoteRows } from './quote-rows.ts';

const width = 80;

const lines = (words: string, lead: string): string[] => textLines(keepUnits(words), { width, lead });

/** A line with its money at the right edge, what it is made of below. */
const moneyLines = ({ what, fact, money }: QuoteRow): string[] => {
  const room = Math.max(1, width - what.length - money.length);
  const isLong = what.length + money.length + 1 > width;
  const head = isLong ? [...lines(what, ''), money.padStart(width)] : [`${what}${' '.repeat(room)}${money}`];
  return [...head, ...(fact === '' ? [] : lines(`${fact}.`, '    '))];
};

const block = (title: string, own: readonly string[]): string[] => (own.length === 0 ? [] : [title, ...own, '']);

/** The quote as text of 80 columns: what it comes to, what one gets and loses, parts, hours, what is not in it, what may change it. */
export const quoteText = (boat: Boat, plan: Plan, quote: Quote): string => {
  const rows = quoteRows(boat, plan, quote);
  const said = (words: readonly string[]): string[] => words.flatMap((one) => lines(one, '- '));
  return `${[
    `QUOTE, ${boat.name}`,
    ...lines(`${rows.total}. ${rows.standing} ${rows.validity}`, ''),
    '',
    ...block('WHAT YOU GET', said(rows.gets)),
    ...block('WHAT YOU LOSE', said(rows.loses)),
    ...block(`PARTS, ${quote.currency}`, rows.parts.flatMap(moneyLines)),
    ...block(
      `WORK, ${quote.currency}`,
      rows.hours.flatMap((row) =>
        moneyLines({ ...row, what: `${row.count} x ${row.what}`, fact: `${row.hours}. Counted ${row.fact}` }),
      ),
    ),
    ...block('TOGETHER', rows.sums.flatMap(moneyLines)),
    ...block(`PHASES, ${quote.currency}`, rows.phases.flatMap(moneyLines)),
    ...block('NOT IN IT', said(rows.exclusions)),
    ...block(
      'WHAT MAY CHANGE IT',
      rows.mayChange.flatMap(({ what, fact, money }) =>
        lines(`${what}: ${money}${fact === '' ? '' : `; ${fact}`}.`, '- '),
      ),
    ),
    ...(quote.terms === undefined ? [] : block('TERMS', lines(quote.terms, ''))),
  ]
    .join('\n')
    .trimEnd()}\n`;
};
