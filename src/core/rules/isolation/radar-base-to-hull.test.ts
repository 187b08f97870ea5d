import { expect, test } from 'vitest';
import { aSteelBoat, withMetal } from '../../steel-boat.test-helper.ts';
import { isolationFindings } from './isolation-case.test-helper.ts';
import { radarBaseToHull } from './radar-base-to-hull.ts';

const standing = (mount: 'metal' | 'isolated', kind: string) =>
  withMetal(aSteelBoat(), { id: 'unit', kind, mount, earthing: { bodyTo: 'negative' } });

test('one on a pad passes', () => {
  expect(isolationFindings(radarBaseToHull, standing('isolated', 'radar'))).toEqual([]);
});

test('one that stands bare is a fault that tells the joints and what parts them', () => {
  const [finding] = isolationFindings(radarBaseToHull, standing('metal', 'radar'));
  expect(finding).toMatchObject({ level: 'fault', about: ['unit'] });
  expect(finding?.says).toContain('Unit: its case is its minus. Unit stands bare on the hull.');
  expect(finding?.cure).toMatch(/^At unit: stand it on an insulating pad/);
});

test('of a unit of another kind another rule speaks', () => {
  expect(isolationFindings(radarBaseToHull, standing('metal', 'amplifier'))).toEqual([]);
});
