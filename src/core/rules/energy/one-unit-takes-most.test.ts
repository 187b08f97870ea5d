import { expect, test } from 'vitest';
import type { EnergyDay } from '../../plan-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { oneUnitTakesMost } from './one-unit-takes-most.ts';

const day = (when: string, units: readonly EnergyDay['byKit'][number][]): EnergyDay => {
  const wh = units.reduce((sum, { after }) => sum + (after?.wh ?? 0), 0);
  return {
    when,
    parts: { anchor: 24, sailing: 0, motoring: 0, alongside: 0 },
    chargedAfter: 1,
    atV: 12,
    ahPerDayBefore: 0,
    ahPerDayAfter: wh / 12,
    whPerDayBefore: 0,
    whPerDayAfter: wh,
    phases: [],
    byKit: [...units],
    banks: [],
  };
};
const unit = (kit: string, wh: number): EnergyDay['byKit'][number] => ({
  kit,
  known: 'sheet',
  after: { hours: 24, wh, ah: wh / 12, fromBankWh: wh, bank: 'house' },
});

test('a day shared half and half passes, and so does a day alongside', () => {
  expect(
    findingsOf(oneUnitTakesMost, { plan: { energy: [day('anchor', [unit('gnss', 50), unit('radio', 50)])] } }),
  ).toEqual([]);
  expect(findingsOf(oneUnitTakesMost, { plan: { energy: [day('alongside', [unit('radio', 50)])] } })).toEqual([]);
});

test('a unit that takes more than all others is advice, once for all days', () => {
  const units = [unit('gnss', 40), { ...unit('radio', 160), savesH: 60 }];
  const energy = [day('anchor', units), day('under-way-night', units)];
  expect(findingsOf(oneUnitTakesMost, { plan: { energy } })).toMatchObject([
    {
      level: 'advice',
      about: ['radio'],
      says: 'Old radio takes 160 of the 200 Wh of a day at anchor, a day and night under way. Without it the bank lasts 2.5 days longer.',
      measured: { value: 80, unit: '% of the day' },
    },
  ]);
});

test('a satellite terminal is named for what it is', () => {
  const energy = [day('anchor', [{ ...unit('radio', 1800), internet: true }, unit('gnss', 40)])];
  expect(findingsOf(oneUnitTakesMost, { plan: { energy } })[0]?.says).toContain('satellite internet terminal');
});
