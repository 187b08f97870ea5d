import { expect, test } from 'vitest';
import type { NetworkEntry } from '../../plan-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { switchElsewhere } from './switch-elsewhere.ts';

const withHub = (kit: string, cableM: number, bestM: number): NetworkEntry => ({
  id: kit,
  units: [kit],
  hubs: [{ kit, sockets: 5, free: 1, cableM, best: { place: 'helm', cableM: bestM } }],
  radios: [],
});
const found = (kit: string, cableM: number, bestM: number) =>
  findingsOf(switchElsewhere, { plan: { networks: [withHub(kit, cableM, bestM)] } });

test('12 m of cable instead of 20 m is advice with the move as its cure', () => {
  const [finding] = found('display', 20, 12);
  expect(finding).toMatchObject({ level: 'advice', about: ['display', 'helm'] });
  expect(finding?.cures?.[0]?.edits).toEqual([{ edit: 'move-unit', params: { unit: 'display', place: 'helm' } }]);
});

test('2 m less, or 4 m of 100, are not worth a word; nor is a switch that stays', () => {
  expect(found('display', 10, 8)).toEqual([]);
  expect(found('display', 100, 96)).toEqual([]);
  expect(found('radio', 20, 12)).toEqual([]);
});
