import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { LineEntry } from '../../plan-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { noRoomToBend } from './no-room-to-bend.ts';

const line = (kind: LineEntry['kind'], longestM = 4): LineEntry => ({
  id: `${kind}:display.plug~gnss.plug`,
  kind,
  from: 'display.plug',
  to: 'gnss.plug',
  places: ['helm', 'locker'],
  ways: ['locker-helm'],
  lengthM: longestM,
  longestM,
  guessed: false,
});
const found = (tailM: number, lines: LineEntry[]) => {
  const { boat } = aBoat().unit('display', { tail: { valueM: tailM, how: 'taped', lessM: 0, moreM: 0 } });
  return findingsOf(noRoomToBend, { boat, plan: { lines } }).filter(({ about }) => about.includes('display'));
};

test('100 mm radius (several installation handbooks) takes 207 mm with the plug: 210 mm pass, 200 mm do not', () => {
  expect(found(0.21, [line('pair')])).toEqual([]);
  const [finding] = found(0.2, [line('pair')]);
  expect(finding).toMatchObject({ level: 'doubt', measured: { value: 200 }, limit: { value: 207, unit: 'mm' } });
});

test('a long coax of 10.3 mm still turns within 100 mm once, and a unit without a new line is left alone', () => {
  expect(found(0.21, [line('coax', 20)])).toEqual([]);
  expect(found(0.05, [{ ...line('pair'), kept: ['old'] }])).toEqual([]);
});

test('a longer tail never gets a finding that a shorter one had not', () => {
  const counts = [0.05, 0.1, 0.2, 0.207, 0.3, 0.7].map((tailM) => found(tailM, [line('drop')]).length);
  expect(counts).toEqual([...counts].sort((one, other) => other - one));
});
