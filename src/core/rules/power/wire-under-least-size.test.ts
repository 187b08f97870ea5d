import { expect, test } from 'vitest';
import { findingsOf } from '../rule-case.test-helper.ts';
import { aFeed } from './power-case.test-helper.ts';
import { wireUnderLeastSize } from './wire-under-least-size.ts';

const found = (over: Parameters<typeof aFeed>[0]) => findingsOf(wireUnderLeastSize, { plan: { feeds: [aFeed(over)] } });

test('a conductor in a sheath has 0.75 mm² at least (ISO 10133, second-hand)', () => {
  expect(found({ areaMm2: 0.75 })).toEqual([]);
  expect(found({ areaMm2: 0.5 })).toMatchObject([
    { level: 'doubt', measured: { value: 0.5, unit: 'mm²' }, limit: { value: 0.75 } },
  ]);
});

test('the lead of a bus is the lead of its own standard', () => {
  expect(found({ areaMm2: 0.5, wire: 'bus-cable' })).toEqual([]);
});
