import { expect, test } from 'vitest';
import type { LightingEntry } from '../../lighting-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { dimApart } from './dim-apart.ts';

type Screens = LightingEntry['screens'];
const found = (...screens: Screens) => findingsOf(dimApart, { plan: { lighting: [{ place: 'helm', screens }] } });
const knob = (kit: string): Screens[number] => ({ kit, dims: 'own-knob' });
const grouped = (kit: string, group: string): Screens[number] => ({ kit, dims: 'with-group', group });

test('a screen with a knob beside one of a group is advice that names both and the knob', () => {
  const [finding] = found(grouped('display', 'display'), knob('radio'));
  expect(finding).toMatchObject({ level: 'advice', about: ['display', 'radio'] });
  expect(finding?.says).toMatch(/with the others of its maker.*by a knob of its own/);
});

test('two knobs, and two groups, are advice too', () => {
  expect(found(knob('display'), knob('radio'))).toHaveLength(1);
  expect(found(grouped('display', 'display'), grouped('radio', 'radio'))).toHaveLength(1);
});

test('one group passes, and so do a screen alone and one of which nobody has said with whom it dims', () => {
  expect(found(grouped('display', 'display'), grouped('radio', 'display'))).toEqual([]);
  expect(found(knob('display'))).toEqual([]);
  expect(found(knob('display'), { kit: 'radio', dims: 'with-group' })).toEqual([]);
});
