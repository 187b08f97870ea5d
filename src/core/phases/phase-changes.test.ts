import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import type { PhaseBus } from '../phases-shape.ts';
import { changesIn, movedTerminators, phasesOf } from './phase-changes.ts';

const busWith = (ends: [string, string]): PhaseBus => ({
  id: 'nav',
  grade: 'light',
  lengthM: 4,
  longestDropM: 1,
  devices: 2,
  len: 3,
  ends,
  spares: [],
  broken: [],
});

test('the phases are those in which something comes or goes, in order', () => {
  const { boat } = aBoat().unit('compass', { phase: 4 }).unit('radio', { fate: 'goes', phase: 2 });
  expect(phasesOf({ boat })).toEqual([1, 2, 4]);
  expect(changesIn({ boat }, 2)).toEqual({ comes: [], goes: ['radio'] });
  expect(changesIn({ boat }, 4)).toEqual({ comes: ['compass'], goes: [] });
});

test('a terminator moves where the trunk ends elsewhere, whichever way round it is written', () => {
  const moved = (...ends: [string, string][]) =>
    movedTerminators(ends.map((own, n) => ({ phase: n + 1, buses: [busWith(own)] })));
  expect(moved(['bow', 'helm'], ['helm', 'bow'])).toEqual([]);
  expect(moved(['bow', 'helm'], ['helm', 'mast'])).toEqual([{ bus: 'nav', phase: 2, from: 'bow', to: 'mast' }]);
  expect(
    movedTerminators([
      { phase: 1, buses: [] },
      { phase: 2, buses: [busWith(['bow', 'helm'])] },
    ]),
  ).toEqual([]);
});
