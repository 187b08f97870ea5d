import { expect, test } from 'vitest';
import type { LightingEntry } from '../../lighting-shape.ts';
import { told } from '../told.test-helper.ts';
import { screensRules } from './index.ts';

const of = (rule: string, ...screens: LightingEntry['screens']) =>
  told(screensRules, `screens/${rule}`, { plan: { lighting: [{ place: 'helm', screens }] } });

test('screens that dim apart are told by the place, and each with what dims it', () => {
  expect(
    of('dim-apart', { kit: 'display', dims: 'with-group', group: 'display' }, { kit: 'radio', dims: 'own-knob' }),
  ).toEqual([
    'advice display radio: At helm dash the screens do not dim together: Helm display with the others of its maker, Old radio by a knob of its own. At night one that is left bright takes the sight of whoever steers. [ / ] Take screens that understand the same dimming, or put the knob of each where a hand finds it in the dark and say so on the card for the night.',
  ]);
});

test('an alarm that goes on is told by the place and both screens', () => {
  const dims = 'own-knob' as const;
  expect(
    of(
      'alarm-not-quietened-together',
      { kit: 'display', dims, quietens: true },
      { kit: 'radio', dims, quietens: false },
    ),
  ).toEqual([
    'advice display radio: At helm dash an alarm silenced on Helm display goes on at Old radio. [ / ] Set one of them not to sound alarms that the other sounds too, or take screens that fall silent together.',
  ]);
});
