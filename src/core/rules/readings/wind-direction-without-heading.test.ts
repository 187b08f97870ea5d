import { expect, test } from 'vitest';
import { wired } from '../../readings/wired.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { windDirectionWithoutHeading } from './wind-direction-without-heading.ts';

const found = ({ sends = ['MWD'], hears = [] }: { sends?: string[]; hears?: string[] }) =>
  findingsOf(windDirectionWithoutHeading, {
    boat: wired({
      units: {
        compass: { ports: { out: { protocol: 'nmea0183', sends: ['HDT'] } } },
        wind: { ports: { in: { protocol: 'nmea0183', hears }, out: { protocol: 'nmea0183', sends } } },
        screen: { ports: { in: { protocol: 'nmea0183', hears: ['MWD'] } } },
      },
      joins: { course: ['compass.out', 'wind.in'], wire: ['wind.out', 'screen.in'] },
    }),
  });

test('wind by the compass from a unit without heading is a doubt', () => {
  expect(found({})).toMatchObject([
    {
      id: 'readings/wind-direction-without-heading:wind.out',
      level: 'doubt',
      says: expect.stringMatching(/^Wind sends/),
    },
  ]);
});

test('a unit that hears heading, and one that sends wind by the bow only, pass', () => {
  expect(found({ hears: ['HDT'] })).toEqual([]);
  expect(found({ sends: ['MWV'] })).toEqual([]);
});
