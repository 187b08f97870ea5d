import fc from 'fast-check';
import { expect, test } from 'vitest';
import { scaledFrame, steppedFrame } from './moved-frame.ts';
import { type ViewFrame, wholeFrame } from './view-frame.ts';

const sheet = { widthMm: 280, heightMm: 180 };

test('a sheet that grows about a point of its window leaves that point where it is', () => {
  const frame = scaledFrame(wholeFrame, { factor: 2, still: [100, 50] }, sheet);
  expect(frame).toEqual({ scale: 2, shiftXMm: -100, shiftYMm: -50 });
});

test('a sheet grows to sixteen times and shrinks to the whole of it, and no further', () => {
  expect(scaledFrame(wholeFrame, { factor: 40, still: [0, 0] }, sheet).scale).toBe(16);
  expect(scaledFrame(wholeFrame, { factor: 0.5, still: [0, 0] }, sheet)).toEqual(wholeFrame);
});

test('a whole sheet is pulled a quarter of its size past the edge, and no further', () => {
  const far = steppedFrame(wholeFrame, { xMm: 500, yMm: -500 }, sheet);
  expect(far).toEqual({ scale: 1, shiftXMm: 70, shiftYMm: -45 });
});

const number = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
const anyFrame = fc.record({ scale: number(1, 16), shiftXMm: number(-900, 900), shiftYMm: number(-900, 900) });

/** How much of what is seen through the window of the whole sheet lies beside it, as a share of the sheet, each way. */
const beside = ({ scale, shiftXMm, shiftYMm }: ViewFrame): readonly number[] => [
  shiftXMm / scale / sheet.widthMm,
  shiftYMm / scale / sheet.heightMm,
  ((sheet.widthMm - shiftXMm) / scale - sheet.widthMm) / sheet.widthMm,
  ((sheet.heightMm - shiftYMm) / scale - sheet.heightMm) / sheet.heightMm,
];

test('whatever one does, no more than a quarter of a sheet comes into sight beside it', () => {
  fc.assert(
    fc.property(anyFrame, number(0.1, 10), number(-50, 300), number(-400, 400), (frame, factor, xMm, stepMm) => {
      const scaled = scaledFrame(frame, { factor, still: [xMm, stepMm] }, sheet);
      const stepped = steppedFrame(frame, { xMm: stepMm, yMm: xMm }, sheet);
      for (const share of [...beside(scaled), ...beside(stepped)]) expect(share).toBeLessThanOrEqual(0.25 + 1e-9);
    }),
  );
});
