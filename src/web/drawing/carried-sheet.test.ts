import fc from 'fast-check';
import { expect, test } from 'vitest';
import { frameOfMove, moveBetween, moveOfFrame, type PictureMove } from './carried-sheet.ts';

const lie = { pxPerMm: 4, leftPx: 100, topPx: 0 };

test('a sheet of twice the size, drawn 10 mm to the left, is the picture of it moved 140 px to the left', () => {
  expect(moveOfFrame({ scale: 2, shiftXMm: -10, shiftYMm: 0 }, lie)).toEqual({
    scale: 2,
    shiftXPx: -140,
    shiftYPx: 0,
  });
});

const number = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
const anyLie = fc.record({ pxPerMm: number(0.5, 12), leftPx: number(-300, 300), topPx: number(-300, 300) });
const anyFrame = fc.record({ scale: number(1, 16), shiftXMm: number(-900, 900), shiftYMm: number(-900, 900) });

test('a frame comes back from the move it is', () => {
  fc.assert(
    fc.property(anyFrame, anyLie, (frame, on) => {
      const back = frameOfMove(moveOfFrame(frame, on), on);
      expect(back.scale).toBe(frame.scale);
      expect(back.shiftXMm).toBeCloseTo(frame.shiftXMm, 6);
      expect(back.shiftYMm).toBeCloseTo(frame.shiftYMm, 6);
    }),
  );
});

const moved = ({ scale, shiftXPx, shiftYPx }: PictureMove, x: number, y: number) =>
  [scale * x + shiftXPx, scale * y + shiftYPx] as const;

test('every point of a carried picture is where it would be drawn', () => {
  fc.assert(
    fc.property(anyFrame, anyFrame, anyLie, number(0, 400), number(0, 400), (from, to, on, xMm, yMm) => {
      const drawn = ({ scale, shiftXMm, shiftYMm }: typeof from) =>
        [on.pxPerMm * (scale * xMm + shiftXMm) + on.leftPx, on.pxPerMm * (scale * yMm + shiftYMm) + on.topPx] as const;
      const [x, y] = moved(moveBetween(moveOfFrame(from, on), moveOfFrame(to, on)), ...drawn(from));
      expect(x).toBeCloseTo(drawn(to)[0], 4);
      expect(y).toBeCloseTo(drawn(to)[1], 4);
    }),
  );
});
