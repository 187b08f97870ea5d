import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import type { Charger } from '../../boat/supply.ts';
import type { DayBank, EnergyDay } from '../../energy-shape.ts';
import { told } from '../told.test-helper.ts';
import { ampHours, lasting } from './day-words.ts';
import { energyRules } from './index.ts';

const bankOf = (own: Partial<DayBank> = {}): DayBank => ({
  phase: 1,
  bank: 'house',
  wh: 600,
  ah: 50,
  unchargedH: 24,
  fromBankAh: 40,
  usableAh: 55,
  enduranceH: 33,
  ...own,
});

/** A day at anchor, charged every day, that takes 50 Ah from the house. */
const dayOf = (own: Partial<EnergyDay> = {}): EnergyDay => ({
  when: 'anchor',
  parts: { sailing: 0, motoring: 2, anchor: 19, alongside: 3 },
  chargedAfter: 1,
  atV: 12,
  ahPerDayBefore: 0,
  ahPerDayAfter: 50,
  whPerDayBefore: 0,
  whPerDayAfter: 600,
  phases: [{ phase: 1, wh: 600, ah: 50, leastWh: 600, mostWh: 600 }],
  byKit: [],
  banks: [bankOf()],
  ...own,
});

const taken = (ah: number, bank = 'house') => ({ hours: 1, wh: 12 * ah, ah, fromBankWh: 12 * ah, bank });
const kit = (id: string, ah: number, bank = 'house') => ({ kit: id, known: 'sheet' as const, after: taken(ah, bank) });

const tooSmall = (day: EnergyDay): readonly string[] =>
  told(energyRules, 'energy/bank-too-small', { boat: aBoat().boat, plan: { energy: [day] } });

test('a bank that is drawn too low is told with what goes most from it, the largest first, and none of another bank', () => {
  const byKit = [kit('gnss', 3), kit('compass', 12), kit('display', 25), kit('radio', 99, 'other')];
  expect(tooSmall(dayOf({ byKit, banks: [bankOf({ fromBankAh: 66 })] }))).toEqual([
    'doubt house: In a day at anchor the bank house gives 66 Ah before it is charged again, and 55 Ah of its 110 Ah are for use; it lasts 33 hours. [60 % of its capacity / 50] Switch off what is not needed (most goes to: Helm display 25 Ah, Heading sensor at the mast 12 Ah), charge more often, or fit at least 132 Ah.',
  ]);
});

test('a bank is as large as its share and its current ask, whichever asks more', () => {
  const cure = (banks: DayBank) => tooSmall(dayOf({ banks: [banks] }))[0]?.match(/fit at least (.*)\.$/)?.[1];
  // half of 110 Ah is for use: 60 Ah ask for 120 Ah; where the current leaves only 44 Ah, for 110 x 60 / 44 = 150 Ah
  expect([cure(bankOf({ fromBankAh: 60 })), cure(bankOf({ fromBankAh: 60, usableAh: 44 }))]).toEqual([
    '120 Ah',
    '150 Ah',
  ]);
});

test('a bank drawn to just what is for use passes, and what counts is the refit at its end', () => {
  expect(tooSmall(dayOf({ banks: [bankOf({ fromBankAh: 55 })] }))).toEqual([]);
  const phases = [1, 2].map((phase) => ({ phase, wh: 600, ah: 50, leastWh: 600, mostWh: 600 }));
  const banks = (first: number, last: number) => [
    bankOf({ fromBankAh: first }),
    bankOf({ phase: 2, fromBankAh: last }),
  ];
  expect(tooSmall(dayOf({ phases, banks: banks(60, 50) }))).toEqual([]);
  expect(tooSmall(dayOf({ phases, banks: banks(50, 60) }))).toHaveLength(1);
});

const charged = (chargers: readonly Omit<Charger, 'id' | 'place'>[], day = dayOf(), own?: (boat: Boat) => void) => {
  const { boat } = aBoat().change((draft) => {
    draft.supply.chargers = chargers.map((charger, at) => ({ id: `charger-${at}`, place: 'locker', ...charger }));
    own?.(draft as Boat);
  });
  return told(energyRules, 'energy/charged-too-little', { boat, plan: { energy: [day] } });
};
const on = (kind: Charger['kind'], ratedA: number, charges = ['house']) => ({ kind, ratedA, charges });

test('a charger gives while it can: one of the engine under way, one of the shore alongside, another in both', () => {
  // two hours of engine and three alongside, at 5 A
  const most = (kind: Charger['kind']) => charged([on(kind, 5)])[0]?.match(/chargers give ([\d.]+) Ah/)?.[1];
  expect([most('alternator'), most('mains'), most('dcdc')]).toEqual(['10', '15', '25']);
});

test('what goes in is what came out of the bank with what a lead or a lithium one keeps for itself', () => {
  const wants = (chemistry: 'agm' | 'lifepo4') =>
    charged([on('mains', 1)], dayOf(), (boat) => {
      for (const bank of boat.supply.banks) bank.chemistry = chemistry;
    })[0]?.match(/wants (\d+) Ah/)?.[1];
  // 10 Ah while charged, 40 / 0.85 and 40 / 0.97 besides
  expect([wants('agm'), wants('lifepo4')]).toEqual(['57', '51']);
});

test('chargers of another bank count for nothing, and one that nobody can tell of for silence', () => {
  expect(charged([on('mains', 1), on('mains', 50, ['other'])])).toHaveLength(1);
  expect(charged([on('mains', 1), on('mains', 50)])).toEqual([]);
  expect((['solar', 'wind'] as const).map((kind) => charged([on('mains', 1), on(kind, 1)]))).toEqual([[], []]);
  expect(charged([on('mains', 1), { kind: 'mains', charges: ['house'] }])).toEqual([]);
});

test('charge and time are said in tenths while they are small', () => {
  expect([9.94, 10, 54.4].map(ampHours)).toEqual(['9.9 Ah', '10 Ah', '54 Ah']);
  expect([9.94, 10, 47.4, 48, 720, 720.5].map(lasting)).toEqual([
    '9.9 hours',
    '10 hours',
    '47 hours',
    '2.0 days',
    '30.0 days',
    'more than a month',
  ]);
});
