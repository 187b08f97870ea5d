import { expect, test } from 'vitest';
import { fitFindings } from './fit-case.test-helper.ts';
import { screwsInAir } from './screws-in-air.ts';

const screw = (edgeMm: number) => ({ xMm: 118, yMm: 0, holeMm: 4, edgeMm, needMm: 10 });

test('a screw 10 mm from the edge passes, and one whose place nobody knows says nothing', () => {
  expect(fitFindings(screwsInAir, { screws: [screw(10)] })).toEqual([]);
  expect(fitFindings(screwsInAir)).toEqual([]);
});

test('screws in air and near an edge are one fault with the worst', () => {
  const [finding] = fitFindings(screwsInAir, { screws: [screw(-3), screw(9), screw(12)] });
  expect(finding).toMatchObject({ level: 'fault', measured: { value: -3 }, limit: { value: 10, unit: 'mm' } });
  expect(finding?.says).toContain('2 screws');
});
