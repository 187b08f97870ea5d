import { expect, test } from 'vitest';
import { need, wired } from '../../readings/wired.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { trueWindFromGround } from './true-wind-from-ground.ts';

/** Wind and position on one bus, a plotter that works true wind out, and what else there is. */
const found = ({ log = false, reference }: { log?: boolean; reference?: 'water' | 'ground' } = {}) =>
  findingsOf(trueWindFromGround, {
    boat: wired({
      units: {
        vane: { ports: { n2k: { protocol: 'nmea2000', sends: [130306] } } },
        gnss: { ports: { n2k: { protocol: 'nmea2000', sends: [129026] } } },
        log: { ports: { n2k: { protocol: 'nmea2000', sends: [128259] } } },
        plotter: {
          ports: {
            n2k: {
              protocol: 'nmea2000',
              sends: [130306, { reading: 'wind-true' }],
              hears: [130306, 129026, 128259],
            },
          },
        },
        repeater: { ports: { n2k: { protocol: 'nmea2000', hears: [130306] } } },
      },
      joins: { nav: ['vane.n2k', 'gnss.n2k', 'plotter.n2k', 'repeater.n2k', ...(log ? ['log.n2k'] : [])] },
      needs: [
        need('wind-true', 'plotter', reference === undefined ? {} : { reference }),
        need('wind-true', 'repeater', reference === undefined ? {} : { reference }),
      ],
    }),
  });

test('true wind made with a log passes', () => {
  expect(found({ log: true })).toEqual([]);
});

test('without a log it is a doubt at each screen, and it says who works it out', () => {
  expect(found()).toMatchObject([
    {
      level: 'doubt',
      about: ['plotter', 'plotter.n2k'],
      says: expect.stringMatching(/^True wind at plotter is worked out there/),
    },
    {
      level: 'doubt',
      about: ['plotter.n2k', 'repeater', 'repeater.n2k'],
      says: expect.stringMatching(/worked out by plotter/),
    },
  ]);
});

test('who asks for wind over the ground has chosen it, and who asks for water is told elsewhere', () => {
  expect(found({ reference: 'ground' })).toEqual([]);
  expect(found({ reference: 'water' })).toEqual([]);
});
