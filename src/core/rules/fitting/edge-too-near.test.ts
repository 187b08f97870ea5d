import { expect, test } from 'vitest';
import { edgeTooNear } from './edge-too-near.ts';
import { fitFindings } from './fit-case.test-helper.ts';

const above = (leftMm: number) => ({ margins: [{ side: 'above' as const, leftMm, needMm: 30 }] });

test('30 mm pass', () => {
  expect(fitFindings(edgeTooNear, above(30))).toEqual([]);
});

test('less is a doubt, less than nothing a fault', () => {
  expect(fitFindings(edgeTooNear, above(18))).toMatchObject([{ level: 'doubt', measured: { value: 18, unit: 'mm' } }]);
  expect(fitFindings(edgeTooNear, { ...above(-4), case: 'no-room', verdict: 'elsewhere' })).toMatchObject([
    { level: 'fault' },
  ]);
});
