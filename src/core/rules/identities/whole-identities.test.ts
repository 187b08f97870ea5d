import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import type { Sends } from '../../boat/sheet.ts';
import { type Sketch, wired } from '../../readings/wired.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { told } from '../told.test-helper.ts';
import { identitiesRules } from './index.ts';

const of = (rule: string, boat: Boat) => told(identitiesRules, `identities/${rule}`, { boat });

const idsOf = (id: string, boat: Boat): string[] =>
  identitiesRules
    .filter((rule) => rule.id === `identities/${id}`)
    .flatMap((rule) => findingsOf(rule, { boat }).map((f) => f.id));

/** Units on one bus that all send the same. */
const senders = (
  count: number,
  sends: (number | Sends)[],
  kit: (n: number) => NonNullable<Sketch['units'][string]['kit']> = () => ({}),
): Boat => {
  const ids = ['a', 'b', 'c', 'd', 'e'].slice(0, count);
  return wired({
    units: Object.fromEntries(
      ids.map((id, n) => [id, { ports: { n2k: { protocol: 'nmea2000', sends } }, kit: kit(n) }]),
    ),
    joins: { nav: ids.map((id) => `${id}.n2k`) },
  });
};
const tank = { pgn: 127505, reading: 'fuel-level', instance: 0 } as const;

/** The device instance is in bits 32 to 39 of a NAME. */
const device = (n: number) => ({ identity: `c05082${n.toString(16).padStart(2, '0')}00200001` });

test('units with one number are told all together, by the number of what they measure', () => {
  expect(of('same-instance-twice', senders(2, [tank]))).toEqual([
    'fault a b nav: A and b both send fuel level as number 0; on every screen one overwrites the other. [ / ] Give each its own number, in the unit and on the settings sheet.',
  ]);
  expect(of('same-instance-twice', senders(3, [tank]))).toEqual([
    'fault a b c nav: A and b and c all send fuel level as number 0; on every screen one overwrites the other. [ / ] Give each its own number, in the unit and on the settings sheet.',
  ]);
  expect(of('device-number-for-data-number', senders(2, [tank], device))).toEqual([
    'doubt a b: A is device 0 and b is device 1, and both send fuel level 0. A screen tells fuel level 0 from 1 by the number in the message, not by that of the device. [ / ] Set the data instance in each unit, and leave the device instance as it was: two numbers, in two places of the menu.',
  ]);
  expect(of('device-number-for-data-number', senders(3, [tank], device))).toEqual([
    'doubt a b c: A is device 0 and b is device 1 and c is device 2, and all send fuel level 0. A screen tells fuel level 0 from 1 by the number in the message, not by that of the device. [ / ] Set the data instance in each unit, and leave the device instance as it was: two numbers, in two places of the menu.',
  ]);
  // what has no number, and what a boat has one of, is spoken of elsewhere
  for (const rule of ['same-instance-twice', 'device-number-for-data-number'])
    for (const sends of [[{ reading: 'fuel-level' }], [{ pgn: 128267, instance: 0 }]] as const)
      expect(of(rule, senders(2, [...sends], device))).toEqual([]);
  const two = senders(2, [tank, { ...tank, instance: 1 }], device);
  expect(idsOf('device-number-for-data-number', two)).toEqual([
    'identities/device-number-for-data-number:a,b:fuel-level:0',
    'identities/device-number-for-data-number:a,b:fuel-level:1',
  ]);
});

test('units known by address only are told by name up to three', () => {
  const recorded = (count: number): Boat => {
    const boat = senders(count, []);
    return { ...boat, sheets: boat.sheets.map((sheet) => ({ ...sheet, source: 'recording' as const })) };
  };
  expect([1, 3, 5].flatMap((count) => of('known-by-address-only', recorded(count)))).toEqual([
    'doubt a: One unit taken from a recording made no claim in it, so it is known by address only: a. After the next start the address may be another’s. [1 units / ] Record again from the moment the bus is switched on, and let the recorder ask for claims.',
    'doubt a b c: 3 units taken from a recording made no claim in it, so they are known by address only: a, b, c. After the next start the address may be another’s. [3 units / ] Record again from the moment the bus is switched on, and let the recorder ask for claims.',
    'doubt a b c d e: 5 units taken from a recording made no claim in it, so they are known by address only: a, b, c and 2 more. After the next start the address may be another’s. [5 units / ] Record again from the moment the bus is switched on, and let the recorder ask for claims.',
  ]);
});

test('units with one NAME are told by their own names', () => {
  expect(
    of(
      'same-name-twice',
      senders(2, [], (n) => ({ ...device(0), name: n === 0 ? 'Fore' : 'Aft' })),
    ),
  ).toEqual([
    'fault a b: Fore and Aft have the same NAME, the 64-bit identity on the bus. No two devices share one, so one of them is entered twice or was copied. [ / ] Take the NAME off the one that is not this very unit, or take the double out.',
  ]);
});

test('several sources are told by name up to four, and by number where they have one', () => {
  expect([2, 4, 5].flatMap((count) => of('several-sources', senders(count, [128267])))).toEqual([
    'doubt a b nav: Depth is sent by 2 units on nav: a and b. Screens may show either, and jump between them. [2 units / ] Say in the source plan which one counts; give the others another number or switch this reading off in them.',
    'doubt a b c d nav: Depth is sent by 4 units on nav: a and b and c and d. Screens may show either, and jump between them. [4 units / ] Say in the source plan which one counts; give the others another number or switch this reading off in them.',
    'doubt a b c d e nav: Depth is sent by 5 units on nav: a, b, c and 2 more. Screens may show either, and jump between them. [5 units / ] Say in the source plan which one counts; give the others another number or switch this reading off in them.',
  ]);
  expect(idsOf('several-sources', senders(2, [128267, { pgn: 128267, instance: 1 }]))).toEqual([
    'identities/several-sources:a,b,nav:depth',
    'identities/several-sources:a,b,nav:depth:1',
  ]);
});

test('tanks with a high number are told apart by what is in them, unless they go', () => {
  const numbered = (own: { fate?: 'goes' } = {}) =>
    aBoat().unit('gnss', {
      ...own,
      instances: (['fuel-level', 'water-level'] as const).flatMap((reading) =>
        [5, 6].map((instance) => ({ port: 'n2k', reading, instance })),
      ),
    }).boat;
  expect(of('tank-number-too-high', numbered())).toEqual([
    'advice gnss: GNSS on the stern rail sends fuel level 6; some displays show tanks 0 to 5 only. [6 number / 5] Give it a lower number, if one is free.',
    'advice gnss: GNSS on the stern rail sends water level 6; some displays show tanks 0 to 5 only. [6 number / 5] Give it a lower number, if one is free.',
  ]);
  expect(idsOf('tank-number-too-high', numbered())).toEqual([
    'identities/tank-number-too-high:gnss:fuel-level:6',
    'identities/tank-number-too-high:gnss:water-level:6',
  ]);
  expect(of('tank-number-too-high', numbered({ fate: 'goes' }))).toEqual([]);
});
