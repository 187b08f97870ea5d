import { expect, test } from 'vitest';
import type { HeadingNear } from '../../heading-shape.ts';
import { headingFindings } from './heading-case.test-helper.ts';
import { headingSensorTooNear } from './heading-sensor-too-near.ts';

const near: HeadingNear = { id: 'radio', is: 'engine', distanceM: 1.2, leastM: 2, by: 'kind', verdict: 'not' };
const found = (own: Partial<HeadingNear> = {}) =>
  headingFindings(headingSensorTooNear, { near: [{ ...near, ...own }] });

test('one far from everything passes, and so does one a little farther off than is asked for', () => {
  expect(headingFindings(headingSensorTooNear, {})).toEqual([]);
  expect(found({ distanceM: 2.2, verdict: 'doubtful' })).toEqual([]);
});

test('1.2 m from an engine is a fault, with both distances and what to do', () => {
  const [finding] = found();
  expect(finding).toMatchObject({
    level: 'fault',
    about: ['compass', 'radio'],
    measured: { value: 1.2, unit: 'm' },
    limit: { value: 2, unit: 'm' },
  });
  expect(finding?.says).toContain('stands 1.20 m from');
  expect(finding?.cure).toContain('slide the sensor 30 cm');
});

test('an antenna is only advised on, a unit by its sheet is a doubt', () => {
  expect(found({ is: 'radio-antenna', leastM: 3, verdict: 'doubtful' })).toMatchObject([{ level: 'advice' }]);
  expect(found({ is: 'unit', by: 'sheet' })).toMatchObject([{ level: 'doubt' }]);
});

test('a satellite compass or a gyro is turned by nothing', () => {
  expect(headingFindings(headingSensorTooNear, { magnetic: false, near: [near] })).toEqual([]);
});
