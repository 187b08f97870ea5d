import { expect, test } from 'vitest';
import { emptyLog } from '../../core/log/boat-log.ts';
import { clockWords, stateWords } from './state-line.ts';
import type { PhoneState } from './store/phone-state.ts';

const heardAtMs = Date.now();
const state = (over: Partial<PhoneState>): PhoneState => ({
  log: emptyLog,
  waiting: new Set(),
  aside: [],
  standing: 'heard',
  heardAtMs,
  ...over,
});
const three = new Set(['a', 'b', 'c']);

test('the line says that all is sent, or how many wait and since when nobody is heard', () => {
  expect(stateWords(state({}))).toMatch(/^All sent, heard /);
  expect(stateWords(state({ waiting: three }))).toMatch(/^Sending 3, heard /);
  expect(stateWords(state({ waiting: three, standing: 'unheard' }))).toMatch(
    /^3 wait until the laptop is heard again\. The laptop is not heard since /,
  );
  expect(stateWords(state({ waiting: new Set(['a']), standing: 'unheard' }))).toMatch(/^1 waits until/);
});

test('a phone that is no longer paired says so, with what it keeps', () => {
  expect(stateWords(state({ waiting: three, standing: 'unpaired' }))).toBe(
    'This phone is no longer paired; 3 wait here',
  );
});

test('a clock that is far off is told of, one that is a minute off is not', () => {
  expect(clockWords(undefined)).toBe('');
  expect(clockWords(60_000)).toBe('');
  expect(clockWords(5 * 60_000)).toContain('5 min ahead of the laptop’s');
  expect(clockWords(-3 * 3_600_000)).toContain('3 h behind the laptop’s');
});
