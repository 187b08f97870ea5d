import { expect, test } from 'vitest';
import { anExample } from '../../../../tests/an-example.test-helper.ts';
import { applyEdits } from '../../../core/boat/history.ts';
import { startHistory } from '../../../core/boat/start-history.ts';
import { quickPlan } from '../../../core/quick-plan.test-helper.ts';
import { changeOrder } from '../../../core/quote/change-order.ts';
import { quoteOf } from '../../../core/quote/quote-of.ts';
import { changeRows } from '../../quote/change-order-text.ts';
import { quoteRows } from '../../quote/quote-rows.ts';
import { changeOrderChapter } from './change-order.ts';
import { quoteChapter } from './quote.ts';
import { wordsOf } from './words-of.test-helper.ts';

const boat = anExample('sandpiper');
const planned = quickPlan(boat);
const before = { boat, plan: planned };
const quote = quoteOf(before);

test('the quote as a chapter says what the quote says, and leaves room to sign', () => {
  const chapter = quoteChapter(boat, planned, quote);
  const says = wordsOf(chapter);
  const rows = quoteRows(boat, planned, quote);
  for (const words of [rows.total, ...rows.gets, ...rows.loses, ...rows.exclusions])
    expect(says).toContain(words.replaceAll('\u00A0', ' '));
  for (const { what, money } of [...rows.sums, ...rows.mayChange]) {
    expect(says).toContain(what);
    expect(says).toContain(money);
  }
  expect(chapter.blocks.at(-1)).toMatchObject({ kind: 'blanks' });
});

test('a change order as a chapter says what changes and what it costs', () => {
  const [item] = planned.shopping.filter(({ each }) => each !== undefined);
  const { boat: after } = applyEdits(startHistory(boat), [
    { edit: 'set-price', params: { of: 'item', item: item?.id ?? '', each: 999_900 } },
  ]);
  const replanned = quickPlan(after);
  const order = changeOrder({ before, after: { boat: after, plan: replanned } });
  const boats = { before: boat, after };
  const says = wordsOf(changeOrderChapter(boats, order));
  const rows = changeRows(boats, order);
  expect(rows.items).toHaveLength(1);
  for (const { what, money } of [...rows.items, ...rows.sums]) {
    expect(says).toContain(what);
    expect(says).toContain(money);
  }
});

test('a change order says so where nothing changes', () => {
  const order = changeOrder({ before, after: before });
  expect(wordsOf(changeOrderChapter({ before: boat, after: boat }, order))).toContain('Nothing changes.');
});
