import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { boatSchema } from '../../core/boat/boat-schema.ts';
import { plan as planOf } from '../../core/plan.ts';
import { overlaps, textBox, textsOf } from '../drawing/box.ts';
import type { Shape } from '../drawing/shapes.ts';
import { boatSheet } from './boat-sheet.ts';
import { type CurveKind, curveHeads, curveKinds } from './curve-kinds.ts';

const boat = boatSchema.parse(
  JSON.parse(readFileSync(new URL('../../../examples/gannet/gannet.boat.json', import.meta.url), 'utf8')),
);
const plan = planOf(boat, new Map());
const [bus] = plan.buses;
if (bus?.held === undefined || bus.along === undefined) throw new Error('The bus of Gannet is fed.');
const { held, along } = bus;

const sheetWith = (curve: CurveKind, widthMm = 242): readonly Shape[] =>
  boatSheet({ boat, plan, widthMm, heightMm: 207, curve }).drawing.shapes;

const curveGroup = (curve: CurveKind, words: string): readonly Shape[] => {
  const group = sheetWith(curve).find((shape) => shape.kind === 'group' && shape.label?.startsWith(words));
  return group?.kind === 'group' ? group.shapes : [];
};
const written = (shapes: readonly Shape[]): string[] => textsOf(shapes).map((text) => text.text);

test('the curve of volts shows the plug with the fewest, and the volts its neediest unit wants', () => {
  const texts = written(curveGroup('volts', 'volts at the plug'));
  const least = Math.min(...bus.volts.map(({ lowestV }) => lowestV));
  expect(texts).toContain(least.toFixed(2));
  expect(texts).toContain(`least ${held.leastV} V`);
});

test('the curve of lost volts shows the most that is lost, beside the limit', () => {
  const texts = written(curveGroup('lost volts', 'volts lost'));
  expect(texts).toContain(Math.max(...bus.volts.map(({ dropV }) => dropV)).toFixed(2));
  expect(texts).toContain(`most ${held.lostV} V`);
});

test('the curve of the load shows what the heaviest stretch carries, beside what one side of the feed may carry', () => {
  const texts = written(curveGroup('load', 'load'));
  expect(texts).toContain(String(Math.max(...along.map(({ carriesLen }) => carriesLen ?? 0))));
  expect(texts).toContain(`most ${held.legLen} LEN`);
});

test('a trunk that doubles back has its own metres under the curve, up to its whole length', () => {
  const texts = written(curveGroup('volts', 'volts at the plug'));
  expect(texts.filter((text) => /^\d+\.\d m$/.test(text))).toEqual([`${bus.lengthM.toFixed(1)} m`]);
});

test.each(curveKinds)('no two texts touch with the curve of %s, on a laptop and on a phone', (curve) => {
  for (const widthMm of [242, 103]) {
    const boxes = textsOf(sheetWith(curve, widthMm)).map((text) => ({ text: text.text, box: textBox(text) }));
    for (const [at, one] of boxes.entries()) {
      const touched = boxes.slice(at + 1).filter((other) => overlaps(one.box, other.box));
      expect(touched.map((other) => `${one.text} / ${other.text}`)).toEqual([]);
    }
  }
});

test.each(curveKinds)('on a phone the column beside the upright strip tells the same: %s', (curve) => {
  expect(written(sheetWith(curve, 103))).toContain(curveHeads[curve]);
});
