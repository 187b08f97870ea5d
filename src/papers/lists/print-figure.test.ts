import { expect, test } from 'vitest';
import { keepUnits, printCost, printCount } from './print-figure.ts';

test('a figure stays on one line with its unit, at the end of a sentence too', () => {
  expect(keepUnits('The drop is 8.60 m as bought; the limit is 6.00 m.')).toBe(
    'The drop is 8.60\u00A0m as bought; the limit is 6.00\u00A0m.',
  );
  expect(keepUnits('4.1 % (0.49 V)')).toBe('4.1\u00A0% (0.49\u00A0V)');
});

test('a figure before a plain word may stand at the end of a line', () => {
  expect(keepUnits('6 metres, 3 more')).toBe('6 metres, 3 more');
});

test('a cost in thousandths of a hundredth is printed as money', () => {
  expect(printCost({ cost: 57_163_000, currency: 'EUR' })).toBe('571.63 EUR');
});

test('one thing is not many', () => {
  expect([printCount(1, 'way'), printCount(2, 'way'), printCount(0, 'way')]).toEqual(['1 way', '2 ways', '0 ways']);
});
