import { expect, test } from 'vitest';
import { aDevice, aPlace, aProblem } from '../backbone/a-problem.test-helper.ts';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { indexBoat } from '../boat/boat-index.ts';
import { clashesInWords, strandedInWords } from './clash-words.ts';

const index = indexBoat(aBoat().boat);
const problem = aProblem({
  places: [aPlace('helm'), aPlace('locker')],
  ways: [],
  devices: [aDevice('display.n2k', 'helm', { len: 3 }), aDevice('gnss.n2k', 'locker', { len: 2 })],
});
const told = { index, problem, held: 'must' } as const;
const grade = 'light';

test('volts are told with the units and their load, what would be lost and what may be', () => {
  const clash = [
    { limit: 'volts', grade, at: ['display.n2k'], figure: { would: 1.812, allowed: 1.5, unit: 'V' } },
  ] as const;
  expect(clashesInWords(told, [clash])).toMatch(
    /^In the way: the volts at the units\. With 2 units of 5 LEN 1\.81 V would be lost on the way to .+; 1\.50 V is the most\.$/,
  );
});

test('limits that clash are told with what giving up each would come to, and a second clash beside them', () => {
  const clashes = [
    [
      { limit: 'one-drop', grade, at: ['gnss.n2k'], figure: { would: 6.9, allowed: 6, unit: 'm' } },
      { limit: 'tee-places', grade, at: ['stern-rail'] },
    ],
    [{ limit: 'device-count' }],
  ] as const;
  expect(clashesInWords(told, clashes)).toMatch(
    /^These cannot all be kept: the length of one drop and the places where tees may stand\. Else the drop to .+ would be 6\.90 m; 6\.00 m is the most, or a tee would have to stand at stern rail, where none may\. Apart from that: In the way: the number of units\.$/,
  );
});

test('a unit no way leads to is named, and a bus no lead reaches is said to have none', () => {
  expect(strandedInWords(told, ['gnss.n2k'])).toMatch(/^No way that takes its cable leads to .+\.$/);
  const unfed = { ...problem, feed: { ...problem.feed, reach: [] } };
  expect(strandedInWords({ ...told, problem: unfed }, [])).toBe(
    'No lead from a panel reaches any place where its feed could stand.',
  );
});
