import { expect, test } from 'vitest';
import { aHoledBoat, fitFindings } from './fit-case.test-helper.ts';
import { panelWeakOrWarped } from './panel-weak-or-warped.ts';

const uneven = (unevenMm: number) => aHoledBoat({ panel: { material: 'grp', thicknessMm: 6, unevenMm } });

test('half the panel and 1 mm over 300 pass', () => {
  expect(fitFindings(panelWeakOrWarped, { cutAwayPct: 50 }, { boat: uneven(1) })).toEqual([]);
});

test('more than half cut away is a doubt', () => {
  expect(fitFindings(panelWeakOrWarped, { cutAwayPct: 63 })).toMatchObject([
    { level: 'doubt', measured: { value: 63, unit: '%' }, limit: { value: 50 } },
  ]);
});

test('2 mm over 300 is advice', () => {
  expect(fitFindings(panelWeakOrWarped, {}, { boat: uneven(2) })).toMatchObject([
    { level: 'advice', limit: { value: 1 } },
  ]);
});
