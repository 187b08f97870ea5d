import { expect, test } from 'vitest';
import { agoWords, dayWords } from './ago-words.ts';

test('the last days are told by how long ago they are, earlier ones by their date', () => {
  const nowMs = new Date(2027, 2, 31, 9, 30).getTime();
  expect(agoWords(nowMs - 59_000, nowMs)).toBe('just now');
  // the phone's clock plays no part, yet the laptop's may have been set back
  expect(agoWords(nowMs + 5000, nowMs)).toBe('just now');
  expect(agoWords(nowMs - 60_000, nowMs)).toBe('1 min ago');
  expect(agoWords(nowMs - 3_600_000, nowMs)).toBe('1 h ago');
  expect(agoWords(nowMs - 86_400_000, nowMs)).toBe('on 2027-03-30');
  expect(dayWords(nowMs)).toBe('2027-03-31');
});
