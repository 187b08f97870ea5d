import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import type { LineEntry } from '../../plan-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { piecesTooShort } from './pieces-too-short.ts';

const line: LineEntry = {
  id: 'drop:display.bus~nav',
  kind: 'drop',
  from: 'display.bus',
  to: 'nav',
  places: ['helm', 'locker'],
  ways: ['locker-helm'],
  lengthM: 2.5,
  longestM: 2.9,
  guessed: true,
};
type State = NonNullable<NonNullable<Boat['pins']>['pieces']>[string]['state'];

const found = (mm: readonly number[], state: State = 'bought') =>
  findingsOf(piecesTooShort, {
    boat: aBoat().with({ pins: { pieces: { [line.id]: { pieces: mm.map((one) => ({ mm: one })), state } } } }).boat,
    plan: { lines: [line] },
  });

test('pieces that cover the longest a line could be pass, and so does a line without any chosen', () => {
  expect(found([2000, 1000])).toEqual([]);
  expect(findingsOf(piecesTooShort, { plan: { lines: [line] } })).toEqual([]);
});

test('a piece inside the doubt is a doubt, and one below the length as entered a fault', () => {
  expect(found([2600])).toMatchObject([
    { level: 'doubt', about: [line.id], measured: { value: 2.6, unit: 'm' }, says: expect.stringContaining('2.90 m') },
  ]);
  expect(found([2000])).toMatchObject([{ level: 'fault', cure: expect.stringContaining('Order 2.90 m') }]);
});

test('pieces that are fitted already are not spoken of', () => {
  expect(found([2000], 'fitted')).toEqual([]);
  expect(found([2000], 'fixed')).toHaveLength(1);
});
