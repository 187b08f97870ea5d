import { expect, test } from 'vitest';
import type { Provide } from '../../phases-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { nothingProvided } from './nothing-provided.ts';
import { twoPhases } from './phase-case.test-helper.ts';

const found = (...provide: Provide[]) => findingsOf(nothingProvided, { plan: { phases: twoPhases({ provide }) } });
const tee: Provide = {
  id: 'tee:nav:mast-base:2',
  does: 'tee',
  at: 'mast-base',
  phase: 1,
  until: 2,
  for: ['compass'],
  bus: 'nav',
  count: 1,
  now: 2500,
  later: 4450,
};
const messenger: Provide = {
  id: 'messenger:locker-stern:2',
  does: 'messenger',
  at: 'locker-stern',
  phase: 1,
  until: 2,
  for: ['drop:gnss.bus~nav'],
};

test('a later tee where none is left free is told about its bus, with the trunk of the end as its cure', () => {
  expect(found(tee)).toMatchObject([
    {
      level: 'advice',
      about: ['nav'],
      says: expect.stringContaining('One tee on Navigation bus will stand where none is left free before'),
      cure: expect.stringContaining('It costs 25.00 EUR now, about 44.50 EUR'),
      cures: [{ edits: [{ edit: 'pin-layout', params: { bus: 'nav', state: 'fixed' } }] }],
    },
  ]);
});

test('a closed way that a later line takes is told; an open pipe is not', () => {
  expect(found({ ...messenger, closed: true })).toMatchObject([{ about: ['locker-stern'] }]);
  expect(found(messenger)).toEqual([]);
});

test('ways and tees of one later phase are one finding', () => {
  expect(found(tee, { ...messenger, closed: true })).toMatchObject([{ about: ['locker-stern', 'nav'] }]);
});

test('a circuit kept free is nothing to be warned of', () => {
  expect(
    found({ id: 'c', does: 'circuit', at: 'main-panel.helm-circuit', phase: 1, until: 2, for: ['display'], now: 0 }),
  ).toEqual([]);
});
