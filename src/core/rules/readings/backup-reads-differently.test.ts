import { expect, test } from 'vitest';
import type { Boat } from '../../boat/boat-schema.ts';
import { need, type UnitSketch, wired } from '../../readings/wired.test-helper.ts';
import { sourcesOn } from '../../sources/source-sketch.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { backupReadsDifferently } from './backup-reads-differently.ts';

const found = (boat: Boat) => findingsOf(backupReadsDifferently, { boat, plan: sourcesOn(boat) });
const talker = (sentence: string): UnitSketch => ({ ports: { out: { protocol: 'nmea0183', sends: [sentence] } } });
const two = (first: string, second: string, reading: 'heading' | 'depth', extra: number[] = []): Boat => {
  const inputs = { a: [first], b: [second] };
  return wired({
    units: {
      a: talker(first),
      b: talker(second),
      screen: {
        ports: {
          ...Object.fromEntries(Object.entries(inputs).map(([id, hears]) => [id, { protocol: 'nmea0183', hears }])),
          n2k: { protocol: 'nmea2000', hears: [127258] },
        },
      },
      gnss: { ports: { n2k: { protocol: 'nmea2000', sends: extra } } },
    },
    joins: { 'wire-a': ['a.out', 'screen.a'], 'wire-b': ['b.out', 'screen.b'], nav: ['gnss.n2k', 'screen.n2k'] },
    needs: [need(reading, 'screen')],
  });
};

test('magnetic heading from one source and true from the other, without variation, is a doubt', () => {
  expect(found(two('HDM', 'HDT', 'heading'))).toMatchObject([
    {
      id: 'readings/backup-reads-differently:a,b,screen:heading',
      level: 'doubt',
      says: expect.stringContaining('as magnetic from the one and as true from the other'),
    },
  ]);
});

test('with variation at the screen, or both in one reference, it passes', () => {
  expect(found(two('HDM', 'HDT', 'heading', [127258]))).toEqual([]);
  expect(found(two('HDM', 'HDG', 'heading'))).toEqual([]);
});

test('depth with its offset from one source and without from the other is a doubt (MS-84, field lists)', () => {
  expect(found(two('DBT', 'DPT', 'depth'))).toMatchObject([
    { says: expect.stringContaining('with its offset from the one and without from the other') },
  ]);
  expect(found(two('DPT', 'DPT', 'depth'))).toEqual([]);
});

test('one source only has nothing to differ from', () => {
  const boat = two('DBT', 'DPT', 'depth');
  expect(found({ ...boat, joins: boat.joins.filter(({ id }) => id !== 'wire-b') })).toEqual([]);
});
