import { expect, test } from 'vitest';
import type { ReadingId } from '../../facts/reading-ids.ts';
import { turn, wired } from '../../readings/wired.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { headingFromLog } from './heading-from-log.ts';

const found = ({
  sends = ['VHW'],
  carries = ['speed-water', 'heading'],
}: {
  sends?: string[];
  carries?: ReadingId[];
}) =>
  findingsOf(headingFromLog, {
    boat: wired({
      units: {
        log: { ports: { out: { protocol: 'nmea0183', sends } } },
        box: {
          ports: {
            in: { protocol: 'nmea0183', hears: ['VHW', 'HDM'] },
            n2k: { protocol: 'nmea2000', sends: [127250, 128259] },
          },
          turns: [turn('in', 'n2k', ...carries)],
        },
      },
      joins: { wire: ['log.out', 'box.in'], nav: ['box.n2k'] },
    }),
  });

test('a log without a compass at a converter that turns headings is a doubt', () => {
  expect(found({})).toMatchObject([
    {
      id: 'converters/heading-from-log:box.in,box.n2k,log.out',
      level: 'doubt',
      says: expect.stringMatching(/^Log sends VHW/),
    },
  ]);
});

test('a log with a compass, and a converter that takes speed only, pass', () => {
  expect(found({ sends: ['VHW', 'HDM'] })).toEqual([]);
  expect(found({ carries: ['speed-water'] })).toEqual([]);
  expect(found({ sends: ['VLW'] })).toEqual([]);
});
