import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type BoxMm, boxRound, firstFrame, frameAt, frameOn, seenBox, sightOf, wholeFrame } from './view-frame.ts';

const sheet = { widthMm: 200, heightMm: 150 };
const sight = sightOf({ sheet, window: { width: 800, height: 600 } });
const box = (xMm: number, yMm: number, sideMm = 10): BoxMm => ({ xMm, yMm, widthMm: sideMm, heightMm: sideMm });

test('a window wider than the sheet reaches past it on both sides', () => {
  const { window } = sightOf({ sheet, window: { width: 1000, height: 600 } });
  expect(window).toEqual({ xMm: -25, yMm: 0, widthMm: 250, heightMm: 150 });
});

test('going to a balloon puts it in the middle at a readable scale', () => {
  const frame = frameOn({ boxes: [box(80, 60)], sight, now: wholeFrame, readableScale: 2 });
  expect(frame).toEqual({ scale: 2, shiftXMm: -70, shiftYMm: -55 });
});

test('going to a balloon near the edge shows no more than the sheet', () => {
  const frame = frameOn({ boxes: [box(2, 140, 5)], sight, now: wholeFrame, readableScale: 2 });
  expect(frame).toEqual({ scale: 2, shiftXMm: 0, shiftYMm: -150 });
});

test('a balloon that is in sight and readable moves nothing', () => {
  expect(frameOn({ boxes: [box(40, 20)], sight, now: wholeFrame, readableScale: 1 })).toBe(wholeFrame);
});

test('a closer view than needed is kept', () => {
  const now = { scale: 4, shiftXMm: -600, shiftYMm: -450 };
  expect(frameOn({ boxes: [box(40, 20, 5)], sight, now, readableScale: 2 }).scale).toBe(4);
});

test('two balloons too far apart to be read together show the first', () => {
  const one = frameOn({ boxes: [box(10, 10)], sight, now: wholeFrame, readableScale: 3 });
  expect(frameOn({ boxes: [box(10, 10), box(180, 130)], sight, now: wholeFrame, readableScale: 3 })).toEqual(one);
});

test('a sheet that fits opens whole, a long one from its upper left as large as it was drawn', () => {
  expect(firstFrame(sight, 1.1)).toBe(wholeFrame);
  const long = sightOf({ sheet: { widthMm: 600, heightMm: 450 }, window: { width: 800, height: 600 } });
  expect(firstFrame(long, 2.5)).toEqual({ scale: 2.5, shiftXMm: 0, shiftYMm: 0 });
});

test('the small map shows the part of the sheet that the window lies over', () => {
  expect(seenBox(sight, wholeFrame)).toEqual({ xMm: 0, yMm: 0, widthMm: 200, heightMm: 150 });
  expect(seenBox(sight, { scale: 2, shiftXMm: -100, shiftYMm: 0 })).toEqual({
    xMm: 50,
    yMm: 0,
    widthMm: 100,
    heightMm: 75,
  });
});

test('wherever the small map is touched, the window goes there at the same scale and stays on the sheet', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -50, max: 250, noNaN: true }),
      fc.double({ min: -50, max: 200, noNaN: true }),
      fc.double({ min: 1, max: 16, noNaN: true }),
      (xMm, yMm, scale) => {
        const frame = frameAt({ xMm, yMm }, sight, { ...wholeFrame, scale });
        const seen = seenBox(sight, frame);
        expect(frame.scale).toBe(scale);
        expect(seen.widthMm).toBeCloseTo(200 / scale, 6);
        expect(seen.heightMm).toBeCloseTo(150 / scale, 6);
        const middle = seen.xMm + seen.widthMm / 2;
        const isFree = xMm >= 100 / scale && xMm <= 200 - 100 / scale;
        if (isFree) expect(middle).toBeCloseTo(xMm, 6);
      },
    ),
    { numRuns: 100 },
  );
});

test('the box round none is none', () => {
  expect(boxRound([])).toBeUndefined();
});

test('wherever a box lies, going to it brings it whole into the window', () => {
  const boxes = fc.record({
    xMm: fc.double({ min: 0, max: 150, noNaN: true }),
    yMm: fc.double({ min: 0, max: 100, noNaN: true }),
    widthMm: fc.double({ min: 0.5, max: 50, noNaN: true }),
    heightMm: fc.double({ min: 0.5, max: 50, noNaN: true }),
  });
  const widths = fc.integer({ min: 200, max: 2000 });
  fc.assert(
    fc.property(boxes, fc.double({ min: 1, max: 8, noNaN: true }), widths, (one, readableScale, width) => {
      const wide = sightOf({ sheet, window: { width, height: 600 } });
      const { scale, shiftXMm, shiftYMm } = frameOn({ boxes: [one], sight: wide, now: wholeFrame, readableScale });
      const left = scale * one.xMm + shiftXMm - wide.window.xMm;
      const top = scale * one.yMm + shiftYMm - wide.window.yMm;
      expect(left).toBeGreaterThanOrEqual(-1e-9);
      expect(top).toBeGreaterThanOrEqual(-1e-9);
      expect(left + scale * one.widthMm).toBeLessThanOrEqual(wide.window.widthMm + 1e-9);
      expect(top + scale * one.heightMm).toBeLessThanOrEqual(wide.window.heightMm + 1e-9);
    }),
    { seed: 8, numRuns: 200 },
  );
});

test('a hidden window, which has no size, gives a sight of the whole sheet and no figure that is none', () => {
  const sheet = { widthMm: 400, heightMm: 200 };
  expect(sightOf({ sheet, window: { width: 0, height: 0 } }).window).toEqual({ xMm: 0, yMm: 0, ...sheet });
});
