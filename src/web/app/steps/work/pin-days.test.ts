import { expect, test } from 'vitest';
import { aPhase } from '../../../../core/work/a-work.test-helper.ts';
import { workAxes } from '../../../../papers/work/work-axis.ts';
import { dateAt, datePast } from './pin-days.ts';

const phase = aPhase();

test('a place on the picture is the day over it, and what lies past the last is the last', () => {
  const [axis] = workAxes([phase], { dayMm: 30, widthMm: Number.POSITIVE_INFINITY });
  if (axis === undefined) throw new Error('The phase of the tests has days.');
  expect(axis.columns.map(({ leftMm, rightMm }) => dateAt(axis, (leftMm + rightMm) / 2))).toEqual([
    '2027-04-05',
    '2027-04-06',
    '2027-04-07',
    '2027-04-08',
    '2027-04-09',
  ]);
  expect([dateAt(axis, -10), dateAt(axis, 1000)]).toEqual(['2027-04-05', '2027-04-09']);
});

test('a day further on is the next day of work, not a day of rest', () => {
  expect(datePast(phase, 'panel:main-panel', 1)).toBe('2027-04-09');
  expect(datePast(phase, 'panel:main-panel', -1)).toBe('2027-04-06');
  expect(datePast(phase, 'survey', -1)).toBeUndefined();
});
