import { expect, test } from 'vitest';
import type { Boat } from '../../boat/boat-schema.ts';
import type { Bank, Panel } from '../../boat/supply.ts';
import { fedTwice } from './fed-twice.ts';
import { startBank, subPanel, supplyFindings, withSupply } from './supply-case.test-helper.ts';

const alsoFed = (target: string, change: (bank: Bank, panel: Panel, boat: Boat) => void = () => undefined) =>
  withSupply((bank, panel, boat) => {
    panel.circuits.push({ id: 'again', ratingA: 10, kind: 'fuse', feeds: [target] });
    change(bank, panel, boat);
  });

test('one feed each passes, and what two circuits share is no second feed', () => {
  expect(supplyFindings(fedTwice, withSupply())).toEqual([]);
});

test('a second circuit to a unit is a fault', () => {
  expect(supplyFindings(fedTwice, alsoFed('display.dc'))).toMatchObject([
    { level: 'fault', about: ['again', 'display', 'helm-circuit'], measured: { value: 2 }, limit: { value: 1 } },
  ]);
});

test('a bus has a rule of its own', () => {
  expect(supplyFindings(fedTwice, alsoFed('nav'))).toEqual([]);
});

test('two banks joined through a unit are named', () => {
  const joined = withSupply((_, __, boat) => {
    boat.supply.banks.push({ ...startBank('apart'), for: 'house' });
    boat.supply.panels.push(subPanel('other', 'engine', ['display.dc']));
  });
  expect(supplyFindings(fedTwice, joined)[0]?.says).toContain('house and engine are joined through its wires');
});

test('a panel that hangs on a bank while a circuit feeds it too has two feeds', () => {
  const hung = alsoFed('second', (_, __, boat) => {
    boat.supply.panels.push(subPanel('second', 'house', []));
  });
  expect(supplyFindings(fedTwice, hung)).toMatchObject([{ about: ['again', 'house', 'second'] }]);
  const once = alsoFed('second', (_, __, boat) => {
    boat.supply.panels.push(subPanel('second', 'main-panel', []));
  });
  expect(supplyFindings(fedTwice, once)).toEqual([]);
});

test('a unit that has left by then is not fed twice', () => {
  const left = alsoFed('radio.dc', (_, __, boat) => {
    for (const unit of boat.kit) if (unit.id === 'radio') unit.fate = 'goes';
  });
  expect(supplyFindings(fedTwice, left)).toEqual([]);
});
