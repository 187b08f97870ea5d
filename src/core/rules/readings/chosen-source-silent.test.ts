import { expect, test } from 'vitest';
import type { Boat } from '../../boat/boat-schema.ts';
import { need, type UnitSketch, wired } from '../../readings/wired.test-helper.ts';
import { sourcesOn } from '../../sources/source-sketch.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { chosenSourceSilent } from './chosen-source-silent.ts';

const gnss: UnitSketch = { ports: { n2k: { protocol: 'nmea2000', sends: [129025] } } };
const screen: UnitSketch = { ports: { n2k: { protocol: 'nmea2000', hears: [129025] } } };
const found = (sources: NonNullable<Boat['sources']>) => {
  const boat: Boat = {
    ...wired({
      units: { a: gnss, b: gnss, far: gnss, screen },
      joins: { nav: ['a.n2k', 'b.n2k', 'screen.n2k'] },
      needs: [need('position', 'screen')],
    }),
    sources,
  };
  return findingsOf(chosenSourceSilent, { boat, plan: sourcesOn(boat) });
};

test('a source that is not wired, chosen for the boat or at one screen, is a doubt', () => {
  expect(found([{ reading: 'position', primary: 'far.n2k' }])).toMatchObject([
    {
      id: 'readings/chosen-source-silent:far.n2k:position',
      level: 'doubt',
      says: expect.stringContaining('no screen'),
    },
  ]);
  expect(found([{ reading: 'position', at: 'screen', primary: 'far.n2k' }])).toMatchObject([
    { says: expect.stringContaining('it does not reach screen') },
  ]);
});

test('one that brings the reading passes, and one for a number nobody wants does not', () => {
  expect(found([{ reading: 'position', primary: 'b.n2k' }])).toEqual([]);
  expect(found([{ reading: 'position', instance: 2, primary: 'b.n2k' }])).toHaveLength(1);
});
