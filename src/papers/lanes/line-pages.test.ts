import { expect, test } from 'vitest';
import { anExample } from '../../../tests/an-example.test-helper.ts';
import { quickPlan } from '../../core/quick-plan.test-helper.ts';
import { textBox, textsOf } from '../drawing/box.ts';
import { balloonsOf, clashes } from '../sheet/on-the-sheet.test-helper.ts';
import { lineDiagram } from './line-diagram.ts';
import { linePages } from './line-pages.ts';

const planned = (name: string) => {
  const boat = anExample(name);
  return { boat, plan: quickPlan(boat) };
};
const page = { widthMm: 263, heightMm: 171 };
const unitsOf = (shapes: Parameters<typeof balloonsOf>[0]): Set<string> =>
  new Set(balloonsOf(shapes).flatMap(({ about = [] }) => about));

test('a small network is one page, drawn along the boat', () => {
  const pages = linePages({ ...planned('sandpiper'), ...page });
  expect(pages.map(({ isAlong }) => isAlong)).toEqual([true]);
});

test('a large one is parted over pages of the size asked for, and no unit and no end of a trunk is lost', () => {
  const known = planned('bonxie');
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
