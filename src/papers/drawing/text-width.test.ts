import fc from 'fast-check';
import { expect, test } from 'vitest';
import { textWidthMm } from './text-width.ts';
import { wrapText } from './wrap-text.ts';

const words = { sizeMm: 3, face: 'words' } as const;

test('figures stand in columns: every figure and letter of the figure face is 0.65 of its size wide', () => {
  expect(textWidthMm('12.3 m', { sizeMm: 3, face: 'figures' })).toBeCloseTo(6 * 0.65 * 3, 9);
  expect(textWidthMm('µΩ≤²→✓', { sizeMm: 3, face: 'figures' })).toBeCloseTo(6 * 0.65 * 3, 9);
});

test('every sign the papers use is in the word face', () => {
  for (const sign of 'µ Ω ≤ ² → ✓ · – ± ° × — “ ” … ½ é ß Å ł') {
    expect(textWidthMm(sign, words), sign).toBeLessThan(3);
  }
});

test('a sign that no face has is measured as a full square, never as nothing', () => {
  expect(textWidthMm('漢', words)).toBe(3);
});

test('semibold words are wider than regular ones', () => {
  expect(textWidthMm('screen', { ...words, weight: 'semibold' })).toBeGreaterThan(textWidthMm('screen', words));
});

test('a wrapped text keeps every word and every line fits', () => {
  fc.assert(
    fc.property(fc.array(fc.stringMatching(/^[a-z]{1,9}$/), { minLength: 1, maxLength: 8 }), (list) => {
      const lines = wrapText(list.join(' '), words, 20);
      expect(lines?.join(' ')).toBe(list.join(' '));
      for (const line of lines ?? []) expect(textWidthMm(line, words)).toBeLessThanOrEqual(20);
    }),
    { numRuns: 100 },
  );
});

test('a word that is too wide is not cut: there is no wrapping for it', () => {
  expect(wrapText('a multifunctional thing', words, 8)).toBeUndefined();
});
