import { expect, test } from 'vitest';
import { labelsText } from './labels-text.ts';

test('runs of three labels and more are shortened', () => {
  expect(labelsText(['C09', 'C03', 'C04', 'C05', 'C06', 'C10'])).toBe('C03–C06, C09, C10');
  expect(labelsText(['VHF-1', 'C07', 'C07'])).toBe('C07, VHF-1');
});
