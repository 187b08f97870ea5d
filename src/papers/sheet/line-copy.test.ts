import { expect, test } from 'vitest';
import type { Drawing } from '../drawing/shapes.ts';
import { themes } from '../drawing/themes.ts';
import { toSvg } from '../drawing/to-svg.ts';
import { radioCode } from '../lanes/lane-code.ts';
import { codedKinds, codeOf, type LineCode, leavingCode } from './line-code.ts';
import { lineKey } from './line-key.ts';

const codes: readonly LineCode[] = [...codedKinds.map(codeOf), radioCode, leavingCode];

/** One kind of line as the key shows it, without the words beside it. */
const sampleSvg = (code: LineCode, theme: 'day' | 'paper'): string => {
  const contents = { codes: [{ ...code, words: '' }], guessed: false, trunk: false, converters: false };
  const { shape } = lineKey({ contents, widthMm: 60, topMm: 0 });
  const drawing: Drawing = { widthMm: 60, heightMm: 5, shapes: [shape] };
  return toSvg(drawing, theme);
};

/** Any colour becomes the same grey, as if the copier knew no more than ink and no ink. */
const withoutColour = (svg: string): string => svg.replaceAll(/#[0-9A-Fa-f]{6}/g, 'grey');

const lightOf = (channel: number): number =>
  channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;

/** Relative luminance of a colour, 0 for black and 1 for white: the grey it copies to. */
const greyOf = (colour: string): number => {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) =>
    lightOf(Number.parseInt(colour.slice(at, at + 2), 16) / 255),
  );
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
};

test('a sheet drawn with all its colours taken away still shows every kind of line by its own stroke', () => {
  const strokes = codes.map((code) => withoutColour(sampleSvg(code, 'day')));
  expect(strokes.every((svg) => svg.includes('stroke="grey"'))).toBe(true);
  expect(new Set(strokes).size).toBe(codes.length);
});

test('thin solid strokes of the same dash always differ by their letter or by being double', () => {
  const marks = codes
    .filter(({ dashMm, widthMm }) => dashMm === undefined && widthMm < 0.6)
    .map(({ letter, doubleMm }) => `${letter ?? 'no letter'}, ${doubleMm === undefined ? 'single' : 'double'}`);
  expect(new Set(marks).size).toBe(marks.length);
});

test('every ink of a line that stays copies to a grey dark enough to see on the paper of the day', () => {
  const paper = greyOf(themes.day.paper);
  for (const { ink, words } of codes) {
    const contrast = (paper + 0.05) / (greyOf(themes.day[ink]) + 0.05);
    expect(contrast, words).toBeGreaterThanOrEqual(4.5);
  }
});
