import { expect, test } from 'vitest';
import type { FitEntry } from '../../fits-shape.ts';
import { aHoledBoat, fitFindings } from './fit-case.test-helper.ts';
import { holeShows } from './hole-shows.ts';

const shows: Partial<FitEntry> = {
  verdict: 'plate',
  case: 'shows',
  uncovered: { widestMm: 13, sides: [], areaMm2: 900, slivers: [] },
};

test('a hole the unit hides passes', () => {
  expect(fitFindings(holeShows)).toEqual([]);
});

test('one that shows is a doubt that says by how much, and what covers it', () => {
  const [finding] = fitFindings(holeShows, shows);
  expect(finding).toMatchObject({ level: 'doubt', about: ['display', 'hole'], measured: { value: 13, unit: 'mm' } });
  expect(finding?.says).toContain('13 mm beyond');
});

test('a plate that is asked for settles it; to enlarge it all the same does not', () => {
  expect(fitFindings(holeShows, shows, { boat: aHoledBoat({ plate: { id: 'plate' } }) })).toEqual([]);
  expect(fitFindings(holeShows, { ...shows, verdict: 'enlarge' })).toHaveLength(1);
});
