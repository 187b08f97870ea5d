import { expect, test } from 'vitest';
import type { MastEntry } from '../../plan-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { mastPartedInTheWet } from './mast-parted-in-the-wet.ts';

const mast = (more: Partial<MastEntry> = {}): MastEntry => ({
  foot: 'mast-base',
  top: 'stern-rail',
  stepped: 'deck',
  stepKnown: false,
  heightM: 12,
  lines: [{ line: 'coax:a~b', aloftM: 12, weightKg: 0.7 }],
  weightKg: 0.7,
  holds: 6,
  ...more,
});

test('a mast parted in a dry box passes', () => {
  expect(findingsOf(mastPartedInTheWet, { plan: { masts: [mast({ breakAt: 'locker' })] } })).toEqual([]);
});

test('one that can be parted nowhere dry is a fault about its foot', () => {
  const [finding] = findingsOf(mastPartedInTheWet, { plan: { masts: [mast()] } });
  expect(finding).toMatchObject({ level: 'fault', about: ['mast-base'] });
});
