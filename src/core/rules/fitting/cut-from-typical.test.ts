import { expect, test } from 'vitest';
import { cutFromTypical } from './cut-from-typical.ts';
import { aHoledBoat, fitFindings } from './fit-case.test-helper.ts';

const typical = { notForCutting: ['typical-sizes' as const] };

test('sizes that were read pass', () => {
  expect(fitFindings(cutFromTypical, {}, { boat: aHoledBoat({ toCut: true }) })).toEqual([]);
});

test('to be cut now by usual sizes is a fault', () => {
  const [finding] = fitFindings(cutFromTypical, typical, { boat: aHoledBoat({ toCut: true }) });
  expect(finding).toMatchObject({ level: 'fault', about: ['display', 'hole'] });
  expect(finding?.cure).toContain('manual');
});

test('a hole that was only guessed says so', () => {
  const [finding] = fitFindings(
    cutFromTypical,
    { notForCutting: ['guessed-hole'] },
    { boat: aHoledBoat({ toCut: true }) },
  );
  expect(finding?.says).toContain('guessed');
});

test('where nothing is to be cut yet, the template alone says it', () => {
  expect(fitFindings(cutFromTypical, typical)).toEqual([]);
});
