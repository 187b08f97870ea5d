import { expect, test } from 'vitest';
import { fitFindings } from './fit-case.test-helper.ts';
import { hotBehind } from './hot-behind.ts';

const heat = (riseK: number) => ({ heat: { powerW: 30, areaM2: 0.8, riseK } });

test('6 K pass, 20 K are a doubt', () => {
  expect(fitFindings(hotBehind, heat(6.25))).toEqual([]);
  expect(fitFindings(hotBehind, heat(20))).toMatchObject([{ level: 'doubt', measured: { value: 20, unit: 'K' } }]);
});

test('too little air beside it is advice', () => {
  const air = [
    { side: 'left' as const, leftMm: 12, needMm: 30 },
    { side: 'above' as const, leftMm: 50, needMm: 50 },
  ];
  expect(fitFindings(hotBehind, { air })).toMatchObject([{ level: 'advice', limit: { value: 30, unit: 'mm' } }]);
});
