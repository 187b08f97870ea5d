import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { HeadingNear } from '../../heading-shape.ts';
import { headingFindings } from './heading-case.test-helper.ts';
import { headingSensorInSteel } from './heading-sensor-in-steel.ts';

const steel: HeadingNear = { id: 'hull', is: 'steel', distanceM: 0.4, leastM: 1, by: 'kind', verdict: 'not' };
const found = (own: Partial<HeadingNear>, site = {}) =>
  headingFindings(headingSensorInSteel, { near: [{ ...steel, ...own }] }, aBoat().unit('compass', { site }).boat);

test('one that is far enough off, or adjusted inside the hull, passes', () => {
  expect(found({ distanceM: 1.5, verdict: 'good' })).toEqual([]);
  expect(found({ distanceM: 1.5, by: 'taken', verdict: 'doubtful' }, { adjuster: true })).toEqual([]);
});

test('0.4 m from plating, measured, is a fault; as the drawing has it, a doubt until somebody measures', () => {
  expect(found({})).toMatchObject([{ level: 'fault', measured: { value: 0.4 }, limit: { value: 1, unit: 'm' } }]);
  const [taken] = found({ by: 'taken' });
  expect(taken?.level).toBe('doubt');
  expect(taken?.cure).toContain('Measure');
});

test('a locker of steel is a fault on any hull', () => {
  expect(
    headingFindings(headingSensorInSteel, {}, aBoat().unit('compass', { site: { steelLocker: true } }).boat),
  ).toMatchObject([{ level: 'fault', about: ['compass'] }]);
});
