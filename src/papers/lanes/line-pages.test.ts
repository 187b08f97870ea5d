import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { boatSchema } from '../../core/boat/boat-schema.ts';
import { plan } from '../../core/plan.ts';
import { textBox, textsOf } from '../drawing/box.ts';
import { balloonsOf, clashes } from '../sheet/on-the-sheet.test-helper.ts';
import { lineDiagram } from './line-diagram.ts';
import { linePages } from './line-pages.ts';

const anExample = (name: string) => {
  const file = new URL(`../../../examples/${name}/${name}.boat.json`, import.meta.url);
  const boat = boatSchema.parse(JSON.parse(readFileSync(file, 'utf8')));
  return { boat, plan: plan(boat, new Map()) };
};
const page = { widthMm: 263, heightMm: 171 };
const unitsOf = (shapes: Parameters<typeof balloonsOf>[0]): Set<string> =>
  new Set(balloonsOf(shapes).flatMap(({ about = [] }) => about));

test('a small network is one page, drawn along the boat', () => {
  const pages = linePages({ ...anExample('sandpiper'), ...page });
  expect(pages.map(({ isAlong }) => isAlong)).toEqual([true]);
});

test('a large one is parted over pages of the size asked for, and no unit and no end of a trunk is lost', () => {
  const known = anExample('bonxie');
  const pages = linePages({ ...known, ...page });
  expect(pages.length).toBeGreaterThan(1);
  for (const { widthMm, heightMm, shapes } of pages) {
    expect([widthMm, heightMm]).toEqual([page.widthMm, page.heightMm]);
    const texts = textsOf(shapes);
    expect(clashes(texts, textBox, ({ text }) => text)).toEqual([]);
    expect(Math.max(...texts.map((text) => textBox(text).rightMm))).toBeLessThanOrEqual(page.widthMm);
    expect(Math.max(...texts.map((text) => textBox(text).bottomMm))).toBeLessThanOrEqual(page.heightMm);
  }
  const whole = unitsOf(lineDiagram({ ...known, widthMm: page.widthMm }).shapes);
  const parted = unitsOf(pages.flatMap(({ shapes }) => shapes));
  expect([...whole].filter((unit) => !parted.has(unit))).toEqual([]);
  const titles = pages.flatMap(({ shapes }) => textsOf(shapes).map(({ text }) => text));
  expect(titles).toEqual(expect.arrayContaining(['part 1 of 2', 'part 2 of 2', 'goes on in the next part']));
});
