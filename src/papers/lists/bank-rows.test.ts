import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { plan } from '../../core/plan.ts';
import { cardBoat } from '../cards/card-boat.ts';
import { bankRows } from './bank-rows.ts';

const rowsOf = (boat: Boat) => bankRows(cardBoat(boat), plan(boat, new Map()));

test('a bank says what it is, what guards it, what a short circuit drives and what it gives before and after', () => {
  const { boat } = aBoat().change((draft) => {
    for (const bank of draft.supply.banks) {
      Object.assign(bank, {
        shortCircuitA: 2000,
        isolator: true,
        main: { kind: 'fuse', family: 'class-t', ratingA: 110 },
      });
    }
  });
  const [row] = rowsOf(boat);
  expect(row?.what).toBe('bank house');
  for (const words of [
    'AGM, 12 V, 110 Ah, for house and starting',
    '110 A main fuse (class T)',
    'battery switch',
    'a short circuit drives 2000 A by its maker',
    'before ',
    'after ',
  ]) {
    expect(row?.fact).toContain(words);
  }
  expect(row?.isOpen).toBe(false);
});

test('what nobody has looked up at a bank is said', () => {
  const fact = rowsOf(aBoat().boat)[0]?.fact ?? '';
  expect(fact).toContain('main fuse, not looked up');
  expect(fact).toContain('nobody has said how much a short circuit drives');
});

test('a bank that cannot carry everything drawing is one to look at', () => {
  const { boat } = aBoat()
    .sheet('small-display', (sheet) => {
      for (const power of sheet.power ?? []) if (power.port === 'dc') power.max = 4000;
    })
    .change((draft) => {
      for (const panel of draft.supply.panels) panel.feeder = { length: { valueM: 30, how: 'taped' }, areaMm2: 2.5 };
    });
  expect(rowsOf(boat)[0]).toMatchObject({ isOpen: true, fact: expect.stringContaining('cannot carry everything') });
});
