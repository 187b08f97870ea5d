import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Area, fillPatterns, patterned } from './fill-pattern.ts';

const area = fc.record({
  leftMm: fc.double({ min: 0, max: 200, noNaN: true }),
  topMm: fc.double({ min: 0, max: 200, noNaN: true }),
  widthMm: fc.double({ min: 0.1, max: 60, noNaN: true }),
  heightMm: fc.double({ min: 1, max: 8, noNaN: true }),
});

const points = (shape: Area, pattern: (typeof fillPatterns)[number]): [xMm: number, yMm: number][] =>
  patterned(shape, { pattern, ink: 'ink' }).flatMap((drawn) =>
    drawn.kind === 'path'
      ? [...drawn.d.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]): [number, number] => [Number(x), Number(y)])
      : [],
  );

describe('a filled area', () => {
  it('keeps every line of its pattern inside itself', () => {
    fc.assert(
      fc.property(area, fc.constantFrom(...fillPatterns), (shape, pattern) => {
        for (const [xMm, yMm] of points(shape, pattern)) {
          expect(xMm).toBeGreaterThanOrEqual(shape.leftMm - 0.01);
          expect(xMm).toBeLessThanOrEqual(shape.leftMm + shape.widthMm + 0.01);
          expect(yMm).toBeGreaterThanOrEqual(shape.topMm - 0.01);
          expect(yMm).toBeLessThanOrEqual(shape.topMm + shape.heightMm + 0.01);
        }
      }),
    );
  });

  it('looks another way by each pattern, in one ink', () => {
    const shape = { leftMm: 3, topMm: 4, widthMm: 20, heightMm: 5 };
    const drawn = fillPatterns.map((pattern) => JSON.stringify(patterned(shape, { pattern, ink: 'ink' })));
    expect(new Set(drawn).size).toBe(fillPatterns.length);
  });
});
