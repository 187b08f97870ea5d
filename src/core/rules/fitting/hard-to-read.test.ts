import { expect, test } from 'vitest';
import { fitFindings } from './fit-case.test-helper.ts';
import { hardToRead } from './hard-to-read.ts';

const view = (hasMm: number) => ({ view: { lettersMm: 5.8, floorMm: 3.5, hasMm } });

test('letters under 20 arcmin and letters nobody measured pass', () => {
  expect(fitFindings(hardToRead, view(5.8))).toEqual([]);
  expect(fitFindings(hardToRead, { view: { lettersMm: 5.8, floorMm: 3.5 } })).toEqual([]);
});

test('smaller is advice, below the floor a doubt', () => {
  expect(fitFindings(hardToRead, view(4))).toMatchObject([{ level: 'advice', limit: { value: 5.8 } }]);
  expect(fitFindings(hardToRead, view(3))).toMatchObject([{ level: 'doubt', limit: { value: 3.5, unit: 'mm' } }]);
});
