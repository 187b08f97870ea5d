import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { indexBoat } from '../../boat/boat-index.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import type { Charger } from '../../boat/supply.ts';
import { joinsOf } from '../../joins/joins-of.ts';
import { planEnergy } from '../../plan-energy.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { chargedTooLittle } from './charged-too-little.ts';

const found = (boat: Boat) => {
  const index = indexBoat(boat);
  return findingsOf(chargedTooLittle, { boat, plan: planEnergy({ index, joinsAt: (at) => joinsOf(index, at) }) });
};

/** The Tern alongside with her radio on all day: 0.6 A for 24 h, 14.4 Ah, on these chargers. */
const alongsideWith = (...chargers: readonly Omit<Charger, 'id' | 'place' | 'charges'>[]): Boat =>
  aBoat()
    .with({ days: [{ id: 'berth', name: 'Berth', like: 'alongside', hours: [{ unit: 'radio', hours: 24 }] }] })
    .change((boat) => {
      boat.supply.chargers = chargers.map((charger, at) => ({
        id: `charger-${at}`,
        place: 'locker',
        charges: ['house'],
        ...charger,
      }));
    }).boat;

test('a charger that gives what the day takes passes', () => {
  expect(found(alongsideWith({ kind: 'mains', ratedA: 1 }))).toEqual([]);
});

test('one that gives less is a fault, whatever else it does', () => {
  expect(found(alongsideWith({ kind: 'mains', ratedA: 0.5 }))).toMatchObject([
    {
      level: 'fault',
      about: ['berth', 'house'],
      measured: { value: expect.closeTo(14.4, 6), unit: 'Ah' },
      limit: { value: 12 },
    },
  ]);
});

test('nothing is said where nobody can say what goes in: sun, or a charger of unknown rating', () => {
  expect(found(alongsideWith({ kind: 'mains', ratedA: 0.5 }, { kind: 'solar', ratedA: 5 }))).toEqual([]);
  expect(found(alongsideWith({ kind: 'mains' }))).toEqual([]);
  expect(found(alongsideWith({ kind: 'alternator', ratedA: 50 }))).toEqual([]);
});

test('what comes out at anchor goes in under engine, with what a lead bank keeps for itself', () => {
  const boat = aBoat()
    .with({ hull: { ...aBoat().boat.hull, kind: 'trawler' } })
    .change((draft) => {
      draft.supply.chargers = [
        { id: 'alternator', place: 'locker', kind: 'alternator', charges: ['house'], ratedA: 1.2 },
      ];
    }).boat;
  const index = indexBoat(boat);
  const { energy } = planEnergy({ index, joinsAt: (at) => joinsOf(index, at) });
  const given = energy.find(({ when }) => when === 'under-way-day')?.banks.at(-1);
  if (given === undefined) throw new Error('No bank.');
  const [finding] = found(boat).filter(({ id }) => id.includes('under-way-day'));
  expect(finding).toMatchObject({ level: 'doubt', about: ['house'], limit: { value: 12 } });
  expect(finding?.measured?.value).toBeCloseTo(given.ah - given.fromBankAh + given.fromBankAh / 0.85, 6);
});
