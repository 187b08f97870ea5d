import { expect, test } from 'vitest';
import { textsOf } from '../drawing/box.ts';
import { flattenPath } from '../drawing/flatten-path.ts';
import { readPath } from '../drawing/read-path.ts';
import type { Drawing } from '../drawing/shapes.ts';
import { leavesOf } from '../sheet/on-the-sheet.test-helper.ts';
import { framedSheet, type SheetContent } from './framed-sheet.ts';
import { groupLabels } from './on-the-paper.test-helper.ts';
import { scaleBar } from './scale-bar.ts';
import { fewLines, sheetLines, sheetText } from './sheet-text.ts';

const block = { boat: 'Tern', sheet: 2, of: 9, standing: 'as fitted', revision: 'B', dateIso: '2027-03-01' } as const;
const content: SheetContent = { title: 'antennas', about: [], shapes: [], mmPerM: 20, isAlong: true };
const written = (drawing: Drawing): string[] => textsOf(drawing.shapes).map(({ text }) => text);

test('two metres at 1:50 are a bar of 40 mm, and five feet one of 30.5 mm', () => {
  const cells = leavesOf([scaleBar(20, [0, 0])]).filter((shape) => shape.kind === 'path');
  const lengthOf = (some: typeof cells): number => {
    const xs = some.flatMap(({ d }) =>
      flattenPath(readPath(d))
        .flat()
        .map(([xMm]) => xMm),
    );
    return Math.max(...xs) - Math.min(...xs);
  };
  expect(lengthOf(cells.slice(0, 4))).toBeCloseTo(40, 1);
  expect(lengthOf(cells.slice(4))).toBeCloseTo(5 * 0.3048 * 20, 1);
  expect(textsOf([scaleBar(20, [0, 0])]).map(({ text }) => text)).toEqual(['2 m', '5 ft']);
});

test('a sheet says all of itself, and the scale it is drawn at', () => {
  const drawing = framedSheet(content, 'letter', block);
  expect(written(drawing)).toEqual(
    expect.arrayContaining(['Tern', 'antennas', 'as fitted', 'B', '2027-03-01', '1:50', '2 of 9', 'US Letter', 'bow']),
  );
  expect(groupLabels(drawing.shapes)).toEqual(expect.arrayContaining(['scale bar', 'bow to the right', 'title block']));
});

test('what is not to scale says so and has neither bar nor arrow', () => {
  const bare = { boat: 'Tern', sheet: 1, of: 9, standing: 'as planned' } as const;
  const drawing = framedSheet({ title: 'key', about: [], shapes: [] }, 'a4', bare);
  expect(written(drawing)).toEqual(expect.arrayContaining(['not to scale', 'none issued']));
  expect(groupLabels(drawing.shapes)).not.toContain('scale bar');
  expect(groupLabels(drawing.shapes)).not.toContain('bow to the right');
});

test('large papers have marks where they are folded, small ones none', () => {
  const strokes = (paper: 'a3' | 'a4'): number => leavesOf(framedSheet(content, paper, block).shapes).length;
  expect(strokes('a3')).toBe(strokes('a4') + 2);
});

test('a long title loses whole words and says so; a figure keeps its unit', () => {
  const lines = fewLines('the locker under the forward berth on the centreline', sheetText.plain, {
    widthMm: 30,
    most: 1,
  });
  expect(lines).toHaveLength(1);
  expect(lines[0]).toMatch(/^the locker .*…$/);
  expect(sheetLines('about 12.50 m long', sheetText.plain, 16).some((line) => line.startsWith('m'))).toBe(false);
});
