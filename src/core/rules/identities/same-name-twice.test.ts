import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { sameNameTwice } from './same-name-twice.ts';

const [one, other] = ['c0788c00e7e04312', 'c0788c00e7e04313'];
const named = (gnss: string, display: string) =>
  aBoat().unit('gnss', { identity: gnss }).unit('display', { identity: display }).boat;

test('units with NAMEs of their own, or with none, pass', () => {
  expect(findingsOf(sameNameTwice, { boat: named(one, other) })).toEqual([]);
  expect(findingsOf(sameNameTwice)).toEqual([]);
});

test('two units with one NAME are a fault about both', () => {
  expect(findingsOf(sameNameTwice, { boat: named(one, one) })).toMatchObject([
    { level: 'fault', about: ['display', 'gnss'] },
  ]);
});
