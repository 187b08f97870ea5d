import { expect, test } from 'vitest';
import { aSteelBoat, withMetal } from '../../steel-boat.test-helper.ts';
import { isolationFindings } from './isolation-case.test-helper.ts';
import { speakerToHull } from './speaker-to-hull.ts';

const standing = (mount: 'metal' | 'isolated', kind: string) =>
  withMetal(aSteelBoat(), { id: 'unit', kind, mount, earthing: { bodyTo: 'negative' } });

test('one on a pad passes', () => {
  expect(isolationFindings(speakerToHull, standing('isolated', 'loudspeaker'))).toEqual([]);
});

test('one that stands bare is a fault that tells the joints and what parts them', () => {
  const [finding] = isolationFindings(speakerToHull, standing('metal', 'loudspeaker'));
  expect(finding).toMatchObject({ level: 'fault', about: ['unit'] });
  expect(finding?.says).toContain('Unit: its case is its minus. Unit stands bare on the hull.');
  expect(finding?.cure).toMatch(/^At unit: stand it on an insulating pad/);
});

test('of a unit of another kind another rule speaks', () => {
  expect(isolationFindings(speakerToHull, standing('metal', 'radar'))).toEqual([]);
});
