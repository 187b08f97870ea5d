import { expect, test } from 'vitest';
import type { LightingEntry } from '../../lighting-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { alarmNotQuietenedTogether } from './alarm-not-quietened-together.ts';

type Screen = LightingEntry['screens'][number];
const found = (...screens: Screen[]) =>
  findingsOf(alarmNotQuietenedTogether, { plan: { lighting: [{ place: 'helm', screens }] } });
const screen = (kit: string, quietens?: boolean, group = 'display'): Screen => ({
  kit,
  dims: 'with-group',
  group,
  ...(quietens === undefined ? {} : { quietens }),
});

test('a screen that goes on when the other is silenced is advice about both', () => {
  expect(found(screen('display', true), screen('radio', false))).toMatchObject([
    { level: 'advice', about: ['display', 'radio'] },
  ]);
  expect(found(screen('display', true), screen('radio', true, 'radio'))).toHaveLength(1);
});

test('two that fall silent together pass, and so does one of which nobody has said', () => {
  expect(found(screen('display', true), screen('radio', true))).toEqual([]);
  expect(found(screen('display', true), screen('radio'))).toEqual([]);
  expect(found(screen('display', false))).toEqual([]);
});
