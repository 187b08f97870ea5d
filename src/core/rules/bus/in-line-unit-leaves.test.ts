import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { Kit } from '../../boat/boat-schema.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { inLineUnitLeaves } from './in-line-unit-leaves.ts';

const found = (fate: Kit['fate'], bothPorts: boolean) => {
  const boat = aBoat()
    .sheet('small-display', (sheet) => {
      const port = sheet.ports.find(({ id }) => id === 'n2k');
      if (port !== undefined) sheet.ports.push({ ...port, id: 'n2k-b' });
      sheet.inLine = ['n2k', 'n2k-b'];
    })
    .unit('display', { fate, phase: 2 })
    .change((draft) => {
      const join = draft.joins.find(({ id }) => id === 'nav-join');
      if (bothPorts) join?.members.push({ kit: 'display', port: 'n2k-b', as: 'both' });
    }).boat;
  return findingsOf(inLineUnitLeaves, { boat });
};

test('a unit in line that stays passes, and so does one that leaves from a drop', () => {
  expect(found('stays', true)).toEqual([]);
  expect(found('goes', false)).toEqual([]);
});

test('a unit in line that goes in phase 2 is a fault about the bus and the unit', () => {
  expect(found('goes', true)).toMatchObject([
    { level: 'fault', about: ['display', 'nav'], says: expect.stringContaining('phase 2') },
  ]);
});
