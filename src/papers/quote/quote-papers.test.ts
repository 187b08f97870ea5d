import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { plan } from '../../core/plan.ts';
import { quoteOf } from '../../core/quote/quote-of.ts';
import { tableCsv } from '../table/table-csv.ts';
import { quotePage } from './quote-page.ts';
import { quoteParts } from './quote-parts.ts';
import { printRange, quoteRows } from './quote-rows.ts';
import { quoteText } from './quote-text.ts';

const tern: Boat = {
  ...aBoat().boat,
  name: 'Tern <b>& mate</b>',
  quote: {
    exclusions: ['Painting the dash.'],
    includes: ['mains'],
    terms: 'Half on order.',
    hours: [{ task: 'survey', eachH: 1.5, reason: 'A small boat.' }],
  },
};
const planned = plan(tern, new Map());
const quote = quoteOf({ boat: tern, plan: planned });
const rows = quoteRows(tern, planned, quote);

test('the text keeps to 80 columns and says what it comes to, what is not in it and that it is an estimate', () => {
  const text = quoteText(tern, planned, quote);
  expect(Math.max(...text.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  expect(text).toContain(rows.total.replaceAll('\u00a0', ' '));
  expect(text.replace(/\s+/g, ' ')).toContain('an estimate, not a promise');
  expect(text).toContain('- Painting the dash.');
  expect(text).not.toContain('mains voltage');
  expect(text).toContain('Half on order.');
  expect(text.replace(/\s+/g, ' ')).toContain('hours set for this boat: A small boat.');
});

test('the page shows the boat’s name letter for letter and runs nothing', () => {
  const page = quotePage(tern, planned, quote);
  expect(page).toContain('Tern &lt;b&gt;&amp; mate&lt;/b&gt;');
  expect(page).not.toMatch(/<script|<b>|https?:/);
  expect(page).toContain('the owner</div>');
  expect(page).toContain(rows.total);
  for (const { what } of rows.hours) expect(page).toContain(what);
});

test('the sums of the parts list are the parts of the quote', () => {
  const [, ...lines] = tableCsv(quoteParts(quote)).trimEnd().split('\r\n');
  const sums = lines.map((line) => Math.round(Number(line.split(',').at(-3)) * 100));
  expect(sums.reduce((all, one) => all + one, 0)).toBe(quote.sums.parts);
  expect(lines).toHaveLength(quote.parts.length);
});

test('a range of one figure is said once, without noughts at its end', () => {
  expect(printRange({ least: 3, most: 3 })).toBe('3');
  expect(printRange({ least: 0.3, most: 4.5 })).toBe('0.3 to 4.5');
});

test('what may change it names lengths and prices to be asked in plain words', () => {
  expect(rows.mayChange.length).toBe(planned.tape.length + (quote.sums.unpriced > 0 ? 1 : 0));
  for (const { what } of rows.mayChange) expect(what).not.toMatch(/\btail\b/);
});
