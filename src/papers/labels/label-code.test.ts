import fc from 'fast-check';
import { expect, test } from 'vitest';
import { codePath, labelCode } from './label-code.ts';
import { readCode } from './read-code.test-helper.ts';

const address = 'http://192.168.1.20:4610/#/boat/gannet/cable/C07';

/** The squares of a path again, as a camera would see them: a square is dark where a rectangle covers its middle. */
const seenIn = (path: string, { squares, squareMm }: { squares: number; squareMm: number }) => {
  const boxes = [...path.matchAll(/M([\d.-]+) ([\d.-]+)h([\d.]+)v([\d.]+)h-[\d.]+Z/g)].map(([, x, y, w, h]) => ({
    x: Number(x),
    y: Number(y),
    w: Number(w),
    h: Number(h),
  }));
  const isDark = (column: number, row: number): boolean => {
    const [x, y] = [(column + 0.5) * squareMm, (row + 0.5) * squareMm];
    return boxes.some((box) => x > box.x && x < box.x + box.w && y > box.y && y < box.y + box.h);
  };
  return { squares, isDark };
};

test.each(['C07', address, `${address}-A`])('a code says %s to a reader that was written apart from it', (text) => {
  expect(readCode(labelCode(text))).toBe(text);
});

test('a code as it is drawn says the same', () => {
  const code = labelCode(address);
  const drawn = codePath(code, { leftMm: 0, topMm: 0, squareMm: 0.33 });
  expect(readCode(seenIn(drawn, { squares: code.squares, squareMm: 0.33 }))).toBe(address);
});

test('a square that is wrong is found by the reader, so that it cannot say yes to anything', () => {
  const code = labelCode(address);
  const middle = Math.floor(code.squares / 2);
  const spoiled = { ...code, isDark: (x: number, y: number) => code.isDark(x, y) !== (x === middle && y === middle) };
  expect(() => readCode(spoiled)).toThrow('check word');
});

test('any id and any address is read back', () => {
  const id = fc.stringMatching(/^[A-Z][A-Z0-9-]{1,9}$/);
  const host = fc.stringMatching(/^[a-z0-9][a-z0-9.-]{0,24}$/);
  fc.assert(
    fc.property(id, host, fc.integer({ min: 1, max: 65_535 }), (label, name, port) => {
      const text = `http://${name}:${port}/#/boat/tern/cable/${label}`;
      expect(readCode(labelCode(text))).toBe(text);
      expect(readCode(labelCode(label))).toBe(label);
    }),
    { numRuns: 60 },
  );
});
