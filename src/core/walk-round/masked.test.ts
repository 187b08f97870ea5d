import fc from 'fast-check';
import { expect, test } from 'vitest';
import { masked, shownSetting } from './masked.ts';

test('of a number only the last two signs are shown, and of a short one none', () => {
  expect(masked('002345678')).toBe('•••••••78');
  expect(masked('1234')).toBe('••••');
  fc.assert(
    fc.property(fc.string({ minLength: 1, maxLength: 40 }), (text) => {
      const shown = [...masked(text)];
      expect(shown.length).toBe([...text].length);
      expect(shown.filter((sign, at) => sign !== '•' || [...text][at] === '•').length).toBeLessThanOrEqual(
        2 + [...text].filter((sign) => sign === '•').length,
      );
    }),
  );
});

test('the number of a radio is covered whatever its setting is called, and an offset is not', () => {
  expect(shownSetting({ name: 'MMSI', value: '002345678' })).toBe('•••••••78');
  expect(shownSetting({ name: 'own number', value: '002 345 678' })).toBe('•••••••••78');
  expect(shownSetting({ name: 'depth offset', value: '-1.2 m to the keel' })).toBe('-1.2 m to the keel');
});
