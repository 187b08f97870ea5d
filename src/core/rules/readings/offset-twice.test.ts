import { expect, test } from 'vitest';
import { need, turn, wired } from '../../readings/wired.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { offsetTwice } from './offset-twice.ts';

const found = (sentence: string) =>
  findingsOf(offsetTwice, {
    boat: wired({
      units: {
        sounder: { ports: { out: { protocol: 'nmea0183', sends: [sentence] } } },
        box: {
          ports: {
            in: { protocol: 'nmea0183', hears: [sentence] },
            n2k: { protocol: 'nmea2000', sends: [128267] },
          },
          turns: [turn('in', 'n2k', 'depth')],
        },
        screen: { ports: { n2k: { protocol: 'nmea2000', hears: [128267] } } },
      },
      joins: { wire: ['sounder.out', 'box.in'], nav: ['box.n2k', 'screen.n2k'] },
      needs: [need('depth', 'screen')],
    }),
  });

test('depth from the keel that goes on in a message with an offset of its own is a doubt', () => {
  expect(found('DBK')).toMatchObject([
    {
      id: 'readings/offset-twice:box,screen,sounder.out',
      level: 'doubt',
      says: expect.stringContaining('from the keel'),
    },
  ]);
  expect(found('DBS')).toMatchObject([{ says: expect.stringContaining('from the surface') }]);
});

test('DPT brings its offset beside the depth, and DBT has none: neither is added twice (MS-84, field lists)', () => {
  expect(found('DPT')).toEqual([]);
  expect(found('DBT')).toEqual([]);
});
