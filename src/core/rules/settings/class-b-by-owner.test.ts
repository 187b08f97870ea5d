import { expect, test } from 'vitest';
import type { ShipPapers } from '../../boat/ship-papers.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { classBByOwner } from './class-b-by-owner.ts';
import { ternWithAis } from './typed-case.test-helper.ts';

const found = (papers: ShipPapers) => findingsOf(classBByOwner, { boat: ternWithAis({ papers }) });

test('an owner under the US flag who means to enter an AIS class B is told who may (LG-01)', () => {
  expect(found({ flag: 'US', workBy: 'owner' })).toMatchObject([
    { id: 'settings/class-b-by-owner:ais', level: 'fault', says: expect.stringContaining('in no event by the user') },
  ]);
});

test('an installer may, and so may owners under other flags (LG-02)', () => {
  expect(found({ flag: 'US', workBy: 'radio-installer' })).toEqual([]);
  expect(found({ flag: 'GB', workBy: 'owner' })).toEqual([]);
  expect(found({ workBy: 'owner' })).toEqual([]);
});
