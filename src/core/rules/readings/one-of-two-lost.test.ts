import { expect, test } from 'vitest';
import { type Sketch, turn, wired } from '../../readings/wired.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { oneOfTwoLost } from './one-of-two-lost.ts';

const rudder = (instance: number): Sketch['units'][string] => ({
  ports: { n2k: { protocol: 'nmea2000', sends: [{ pgn: 127245, instance }] } },
});

/** Rudder sensors with the given numbers before a converter to a dial. */
const found = (...numbers: number[]) => {
  const sensors = Object.fromEntries(numbers.map((number) => [`rudder-${number}`, rudder(number)]));
  return findingsOf(oneOfTwoLost, {
    boat: wired({
      units: {
        ...sensors,
        converter: {
          ports: { n2k: { protocol: 'nmea2000', hears: [127245] }, out: { protocol: 'nmea0183', sends: ['RSA'] } },
          turns: [turn('n2k', 'out', 'rudder')],
        },
        dial: { ports: { in: { protocol: 'nmea0183', hears: ['RSA'] } } },
      },
      joins: {
        nav: [...Object.keys(sensors).map((id) => `${id}.n2k`), 'converter.n2k'],
        pair: ['converter.out', 'dial.in'],
      },
    }),
  });
};

test('one rudder behind a converter passes', () => {
  expect(found(1)).toEqual([]);
});

test('two are a doubt that says who is given what, and who gets one of them', () => {
  expect(found(0, 1)).toMatchObject([
    {
      level: 'doubt',
      id: 'readings/one-of-two-lost:converter.out,dial:rudder:n2k',
      says: 'Converter is given rudder angle 0 and 1 and passes on one of them to dial: the other is not there, or reads as the first.',
      measured: { value: 1, unit: 'numbers' },
    },
  ]);
});

test('of three, two are missed', () => {
  expect(found(0, 1, 2)).toMatchObject([{ says: expect.stringMatching(/the others are not there/) }]);
});
