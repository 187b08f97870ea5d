import fc from 'fast-check';
import { expect, test } from 'vitest';
import { textWidthMm } from '../drawing/text-width.ts';
import { setLines, widestWordMm } from './set-lines.ts';
import { typeStyles } from './type-styles.ts';

const style = typeStyles.cell;

test('words are broken at spaces, and a figure stays with its unit', () => {
  expect(setLines('a line of 12.30\u00a0m here', style, 19)).toEqual(['a line of', '12.30 m here']);
});

test('a long id goes on after a mark, a long word wherever the line ends', () => {
  expect(setLines('panel-house-electronics-port', style, 24)).toEqual(['panel-house-', 'electronics-port']);
  expect(setLines('Überlandleitungsmast', style, 15).join('')).toBe('Überlandleitungsmast');
});

test('line ends of its own stand', () => {
  expect(setLines('one\ntwo', style, 80)).toEqual(['one', 'two']);
});

test('no letter is lost and no line is wider than its room', () => {
  const words = fc.array(
    fc.string({ unit: 'grapheme', minLength: 1, maxLength: 40 }).filter((word) => !/[\s]/u.test(word)),
    {
      minLength: 1,
    },
  );
  fc.assert(
    fc.property(words, fc.integer({ min: 12, max: 80 }), (list, widthMm) => {
      const text = list.join(' ');
      const lines = setLines(text, style, widthMm);
      expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''));
      for (const line of lines) expect(textWidthMm(line, style)).toBeLessThanOrEqual(widthMm);
    }),
  );
});

test('a column as wide as the widest word wraps no word', () => {
  const words = fc.array(fc.string({ unit: fc.constantFrom('a', 'W', 'i', '1'), minLength: 1, maxLength: 9 }), {
    minLength: 1,
  });
  fc.assert(
    fc.property(words, (list) => {
      const widthMm = widestWordMm(list.join(' '), style, 60);
      expect(setLines(list.join(' '), style, widthMm).join(' ').split(' ')).toEqual(list);
    }),
  );
});
