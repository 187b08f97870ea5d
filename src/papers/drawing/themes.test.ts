import { expect, test } from 'vitest';
import type { Ink } from './shapes.ts';
import { type ThemeName, themes } from './themes.ts';

const channels = (colour: string): [number, number, number] => [
  Number.parseInt(colour.slice(1, 3), 16),
  Number.parseInt(colour.slice(3, 5), 16),
  Number.parseInt(colour.slice(5, 7), 16),
];

/** Relative luminance and contrast as the Web Content Accessibility Guidelines 2.2 define them. */
const luminance = (colour: string): number => {
  const [red, green, blue] = channels(colour).map((channel) => {
    const share = channel / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * (red ?? 0) + 0.7152 * (green ?? 0) + 0.0722 * (blue ?? 0);
};
const contrast = (one: string, other: string): number => {
  const [light = 0, dark = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (light + 0.05) / (dark + 0.05);
};

const names: ThemeName[] = ['paper', 'day', 'dusk', 'night'];
const writing: Ink[] = ['ink', 'quiet', 'data', 'ethernet', 'power', 'accent'];
const grounds: Ink[] = ['paper', 'margin', 'water'];

test('black on white has the published contrast of 21 to 1', () => {
  expect(contrast('#000000', '#FFFFFF')).toBeCloseTo(21, 6);
});

test.each(names)('every writing ink of %s can be read on paper, margin and water (4.5 to 1)', (name) => {
  for (const ink of writing) {
    for (const ground of grounds) {
      expect(contrast(themes[name][ink], themes[name][ground]), `${ink} on ${ground}`).toBeGreaterThanOrEqual(4.5);
    }
  }
});

test.each(names)('a number can be read inside a filled balloon of %s', (name) => {
  expect(contrast(themes[name].paper, themes[name].accent)).toBeGreaterThanOrEqual(4.5);
});

test('at night nothing is brighter than the ink but the accent, and red leads in every colour', () => {
  for (const [ink, colour] of Object.entries(themes.night)) {
    if (colour === 'none') continue;
    const [red, green, blue] = channels(colour);
    expect(red, ink).toBeGreaterThanOrEqual(2 * Math.max(green, blue));
    if (ink !== 'accent') expect(luminance(colour), ink).toBeLessThanOrEqual(luminance(themes.night.ink));
  }
});

test('the printed sheet uses no colour', () => {
  for (const colour of Object.values(themes.paper)) {
    if (colour === 'none') continue;
    const [red, green, blue] = channels(colour);
    expect([green, blue]).toEqual([red, red]);
  }
});
