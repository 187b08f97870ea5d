import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type BoxMm, boxRound, frameOn } from './view-frame.ts';

const sheet = { widthMm: 200, heightMm: 150 };
const whole = { scale: 1, shiftXMm: 0, shiftYMm: 0 };

test('going to a balloon puts it in the middle at a readable scale', () => {
  const box: BoxMm = { xMm: 80, yMm: 60, widthMm: 10, heightMm: 10 };
  const frame = frameOn({ box, sheet, now: whole, readableScale: 2 });
  expect(frame).toEqual({ scale: 2, shiftXMm: -70, shiftYMm: -55 });
});

test('going to a balloon near the edge shows no more than the sheet', () => {
  const box: BoxMm = { xMm: 2, yMm: 140, widthMm: 5, heightMm: 5 };
  expect(frameOn({ box, sheet, now: whole, readableScale: 2 })).toEqual({ scale: 2, shiftXMm: 0, shiftYMm: -150 });
});

test('a balloon that is in sight and readable moves nothing', () => {
  const box: BoxMm = { xMm: 40, yMm: 20, widthMm: 10, heightMm: 10 };
  expect(frameOn({ box, sheet, now: whole, readableScale: 1 })).toBe(whole);
});

test('a closer view than needed is kept', () => {
  const now = { scale: 4, shiftXMm: -600, shiftYMm: -450 };
  const box: BoxMm = { xMm: 40, yMm: 20, widthMm: 5, heightMm: 5 };
  expect(frameOn({ box, sheet, now, readableScale: 2 }).scale).toBe(4);
});

test('the box round none is none', () => {
  expect(boxRound([])).toBeUndefined();
});

test('wherever the box lies, going to it brings it whole into the window', () => {
  const boxes = fc.record({
    xMm: fc.double({ min: 0, max: 150, noNaN: true }),
    yMm: fc.double({ min: 0, max: 100, noNaN: true }),
    widthMm: fc.double({ min: 0.5, max: 50, noNaN: true }),
    heightMm: fc.double({ min: 0.5, max: 50, noNaN: true }),
  });
  fc.assert(
    fc.property(boxes, fc.double({ min: 1, max: 8, noNaN: true }), (box, readableScale) => {
      const { scale, shiftXMm, shiftYMm } = frameOn({ box, sheet, now: whole, readableScale });
      expect(scale * box.xMm + shiftXMm).toBeGreaterThanOrEqual(-1e-9);
      expect(scale * (box.xMm + box.widthMm) + shiftXMm).toBeLessThanOrEqual(sheet.widthMm + 1e-9);
      expect(scale * box.yMm + shiftYMm).toBeGreaterThanOrEqual(-1e-9);
      expect(scale * (box.yMm + box.heightMm) + shiftYMm).toBeLessThanOrEqual(sheet.heightMm + 1e-9);
    }),
    { seed: 8, numRuns: 200 },
  );
});
