import { expect, test } from 'vitest';
import type { JoinEntry } from '../../plan-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { twoTalkersOnOnePair } from './two-talkers-on-one-pair.ts';

const pair = (id: string, talker: string, ...listeners: string[]): JoinEntry => ({
  id,
  kind: 'nmea0183',
  members: [
    { kit: talker, port: 'out', as: 'talk' },
    ...listeners.map((kit) => ({ kit, port: 'in', as: 'listen' as const })),
  ],
  from: 'file',
  lines: [],
});

test('one talker with two listeners passes', () => {
  expect(findingsOf(twoTalkersOnOnePair, { plan: { joins: [pair('a', 'gnss', 'radio', 'display')] } })).toEqual([]);
});

test('two pairs that end at one input are a fault there', () => {
  const joins = [pair('a', 'gnss', 'radio'), pair('b', 'compass', 'radio')];
  expect(findingsOf(twoTalkersOnOnePair, { plan: { joins } })).toMatchObject([
    { level: 'fault', about: ['compass.out', 'gnss.out', 'radio.in'] },
  ]);
});
