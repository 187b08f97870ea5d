import { expect, test } from 'vitest';
import { fitFindings } from './fit-case.test-helper.ts';
import { webTooNarrow } from './web-too-narrow.ts';

const web = (leftMm: number) => ({ webs: [{ to: 'second-hole', leftMm, needMm: 30 }] });

test('a web of 12 mm in a panel of 10 mm is a fault of both openings, told once', () => {
  expect(fitFindings(webTooNarrow, web(12))).toMatchObject([
    { level: 'fault', about: ['hole', 'second-hole'], measured: { value: 12 }, limit: { value: 30, unit: 'mm' } },
  ]);
  expect(fitFindings(webTooNarrow, { ...web(12), opening: 'third-hole' })).toEqual([]);
});

test('three thicknesses and more pass', () => {
  expect(fitFindings(webTooNarrow, web(30))).toEqual([]);
});

test('two bezels over each other are told once too', () => {
  const crowds = [{ with: 'second-hole', byMm: 7 }];
  expect(fitFindings(webTooNarrow, { crowds })).toMatchObject([{ level: 'fault', measured: { value: 7, unit: 'mm' } }]);
  expect(fitFindings(webTooNarrow, { crowds, opening: 'third-hole' })).toEqual([]);
});
