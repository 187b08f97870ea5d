import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { fedTwice } from './fed-twice.ts';

test('one feed passes', () => {
  expect(findingsOf(fedTwice)).toEqual([]);
});

test('two circuits on one bus are a fault that names both', () => {
  const boat = aBoat().change((draft) => {
    draft.supply.panels[0]?.circuits.push({ id: 'spare-circuit', ratingA: 3, kind: 'fuse', feeds: ['nav'] });
  }).boat;
  expect(findingsOf(fedTwice, { boat })).toMatchObject([
    { level: 'fault', about: ['bus-circuit', 'nav', 'spare-circuit'], measured: { value: 2 } },
  ]);
});
