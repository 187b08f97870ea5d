import { expect, test } from 'vitest';
import { need, wired } from '../../readings/wired.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { variationMissing } from './variation-missing.ts';

const found = ({
  line = ['HDM', 'VTG'],
  bus = [],
  reference,
}: {
  line?: string[];
  bus?: number[];
  reference?: 'true';
}) =>
  findingsOf(variationMissing, {
    boat: wired({
      units: {
        sensors: { ports: { out: { protocol: 'nmea0183', sends: line } } },
        gnss: { ports: { n2k: { protocol: 'nmea2000', sends: bus } } },
        screen: {
          ports: {
            in: { protocol: 'nmea0183', hears: ['HDM', 'HDG', 'VTG', 'RMC'] },
            n2k: { protocol: 'nmea2000', hears: [127258] },
          },
        },
      },
      joins: { wire: ['sensors.out', 'screen.in'], nav: ['gnss.n2k', 'screen.n2k'] },
      needs: [
        need('heading', 'screen', reference === undefined ? {} : { reference }),
        need('course-speed-ground', 'screen'),
      ],
    }),
  });

test('magnetic heading beside course over ground, and no variation, is a doubt', () => {
  expect(found({})).toMatchObject([
    {
      id: 'readings/variation-missing:screen,sensors.out',
      level: 'doubt',
      says: expect.stringContaining('no variation reaches screen to lay heading beside course over ground'),
    },
  ]);
});

test('variation that comes only in RMC may be an empty field', () => {
  expect(found({ line: ['HDM', 'RMC'] })).toMatchObject([{ says: expect.stringContaining('only in RMC or HDG') }]);
  expect(found({ line: ['HDM', 'RMC'], reference: 'true' })).toMatchObject([
    { says: expect.stringContaining('to make true heading') },
  ]);
});

test('with variation from the bus it passes', () => {
  expect(found({ bus: [127258] })).toEqual([]);
  expect(found({ line: ['HDM', 'RMC'], bus: [127258], reference: 'true' })).toEqual([]);
});
