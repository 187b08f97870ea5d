import fc from 'fast-check';
import { expect, test } from 'vitest';
import { anExample } from '../../../tests/an-example.test-helper.ts';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { quickPlan } from '../../core/quick-plan.test-helper.ts';
import { cardBoat } from '../cards/card-boat.ts';
import { insideMm, textBox, textsOf } from '../drawing/box.ts';
import type { Drawing, GroupShape, Shape } from '../drawing/shapes.ts';
import { toSvg } from '../drawing/to-svg.ts';
import { clashes, leavesOf, piecesOf } from '../sheet/on-the-sheet.test-helper.ts';
import { oneLine } from './one-line.ts';
import { rowsOf } from './one-line-rows.ts';
import { powerSymbols } from './power-node.ts';
import { powerSymbol, symbolWords } from './power-symbols.ts';
import { powerTree } from './power-tree.ts';

/** So many displays on so many panels, each panel on a circuit of the one before. */
const withLoads = (loads: number, panels: number): Boat =>
  aBoat().change((draft) => {
    const [first] = draft.supply.panels;
    const display = draft.kit.find(({ id }) => id === 'display');
    if (first === undefined || display === undefined) throw new Error('The Tern has lost her panel or her display.');
    const all = [first];
    for (let at = 1; at < panels; at++) {
      all.at(-1)?.circuits.push({ id: `to-sub-${at}`, ratingA: 20, kind: 'breaker', feeds: [`sub-${at}`] });
      const next = { id: `sub-${at}`, place: 'helm', from: all.at(-1)?.id ?? '', circuits: [] };
      all.push(next);
      draft.supply.panels.push(next);
    }
    for (let at = 0; at < loads; at++) {
      draft.kit.push({ ...display, id: `extra-${at}`, name: `display number ${at + 1} of a long row of them` });
      all[at % panels]?.circuits.push({ id: `extra-${at}`, ratingA: 5, kind: 'fuse', feeds: [`extra-${at}.dc`] });
    }
  }).boat;

const boats: Record<string, Boat> = {
  ...Object.fromEntries(['gannet', 'sandpiper', 'bonxie', 'wreck'].map((name) => [name, anExample(name)])),
  'sixty loads on four panels': withLoads(60, 4),
  'five loads': withLoads(5, 1),
  'no bank': aBoat().with({ supply: { banks: [], panels: [], dcdc: [] } }).boat,
};
const plans = new Map(Object.entries(boats).map(([name, boat]) => [name, quickPlan(boat)]));

const sizes = [
  { widthMm: 98 },
  { widthMm: 233 },
  { widthMm: 520 },
  { widthMm: 277, heightMm: 174 },
  { widthMm: 420, heightMm: 297 },
];
const cases = Object.keys(boats).flatMap((name) =>
  sizes.map((size) => ({ name, ...size, heightMm: undefined, ...size })),
);

const drawn = (name: string, size: { widthMm: number; heightMm?: number | undefined }): Drawing[] => {
  const [boat, known] = [boats[name], plans.get(name)];
  if (boat === undefined || known === undefined) throw new Error(`No boat ${name}.`);
  const { widthMm, heightMm } = size;
  return oneLine({ boat, plan: known, widthMm, ...(heightMm === undefined ? {} : { heightMm }) });
};

const groupsOf = (shapes: readonly Shape[]): GroupShape[] =>
  shapes.flatMap((shape) => (shape.kind === 'group' ? [shape] : []));

/** The text of a drawing, with the number in each balloon. */
const saysOf = ({ shapes }: Drawing): string =>
  textsOf(shapes)
    .map(({ text }) => text)
    .join(' ');

const faultsOf = (drawing: Drawing): string[] => {
  const texts = textsOf(drawing.shapes);
  const outside = texts.filter((text) => {
    const box = textBox(text);
    return box.leftMm < 0 || box.topMm < 0 || box.rightMm > drawing.widthMm || box.bottomMm > drawing.heightMm;
  });
  const thick = leavesOf(drawing.shapes).flatMap((shape) =>
    shape.kind === 'path' && (shape.stroke?.widthMm ?? 0) >= 0.6 ? piecesOf(shape) : [],
  );
  const crossed = texts.filter((text) => thick.some((piece) => insideMm(textBox(text), piece[0], piece[1]) > 0));
  return [
    ...clashes(texts, textBox, ({ text }) => text),
    ...outside.map(({ text }) => `outside: ${text}`),
    ...crossed.map(({ text }) => `crossed: ${text}`),
  ];
};

test.each(cases)(
  'on the power drawing of $name, $widthMm mm wide and $heightMm high, no text touches another, a bar or the edge',
  ({ name, ...size }) => {
    for (const page of drawn(name, size)) expect(faultsOf(page)).toEqual([]);
  },
);

test('for any number of loads and panels no text touches another, a bar or the edge, and no load is left out', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 60 }),
      fc.integer({ min: 1, max: 5 }),
      fc.constantFrom(...sizes),
      (loads, panels, size) => {
        const boat = withLoads(loads, panels);
        const pages = oneLine({ boat, plan: quickPlan(boat), ...size });
        expect(pages.flatMap(faultsOf)).toEqual([]);
        const labels = pages.flatMap(({ shapes }) => groupsOf(shapes)).map(({ label }) => label);
        for (let at = 1; at <= loads; at++) {
          expect(labels.filter((label) => label?.startsWith(`display number ${at} of`))).toHaveLength(1);
        }
      },
    ),
    { numRuns: 15, examples: [[1, 2, { widthMm: 98 }]] },
  );
}, 60_000);

test('each feed of the plan stands once with its rating, size, length, current and volts', () => {
  const known = plans.get('bonxie');
  const pages = drawn('bonxie', { widthMm: 420, heightMm: 297 });
  const groups = pages.flatMap(({ shapes }) => groupsOf(shapes));
  for (const feed of known?.feeds ?? []) {
    const own = groups.filter(
      ({ about, label }) => about?.includes(feed.line) || label?.startsWith(`converter ${feed.to}:`),
    );
    expect(own, feed.line).toHaveLength(1);
    const label = own[0]?.label ?? '';
    for (const figure of [
      `${feed.circuitA} A `,
      `${feed.lengthM.toFixed(2)} m`,
      `draws ${Number(feed.loadA.toFixed(2))} A`,
      `${feed.atEndV?.toFixed(2)} V`,
    ]) {
      expect(label).toContain(figure);
    }
  }
});

test('pages hold every row once, and none ends with a head that its rows have left', () => {
  const boat = boats.bonxie ?? aBoat().boat;
  const known = quickPlan(boat);
  const rows = rowsOf(powerTree(cardBoat(boat), known));
  const pages = oneLine({ boat, plan: known, widthMm: 277, heightMm: 174 });
  const named = pages.map(({ shapes }) => groupsOf(shapes).filter(({ label }) => label !== 'key of the symbols'));
  expect(named.flat()).toHaveLength(rows.length);
  for (const groups of named.slice(0, -1)) expect(groups.at(-1)?.label).not.toMatch(/^panel /);
  expect(saysOf(pages[1] ?? { widthMm: 0, heightMm: 0, shapes: [] })).toContain('goes on: bank house-a > panel p24');
});

test('a unit has the number it has on the boat drawing', () => {
  const says = drawn('gannet', { widthMm: 233 }).map(saysOf).join(' ');
  expect(says).toMatch(/ 8 5 A breaker m4 .* 24-inch solid-state dome radar/);
});

test('every symbol that is drawn has its word in the key, and no two look alike without colour', () => {
  const [page] = drawn('bonxie', { widthMm: 233 });
  const says = page === undefined ? '' : saysOf(page);
  for (const kind of ['battery', 'fuse', 'breaker', 'switch', 'converter', 'load', 'bus'] as const) {
    expect(says).toContain(symbolWords[kind]);
  }
  const looks = powerSymbols.map((kind) => JSON.stringify(powerSymbol(kind, [0, 0])));
  expect(new Set(looks).size).toBe(powerSymbols.length);
});

test('a bank without anything on it, a circuit that is free and a unit that nothing feeds are said to be so', () => {
  const says = drawn('gannet', { widthMm: 233 }).map(saysOf).join(' ');
  expect(says).toContain('nothing of this plan hangs on it');
  expect(says).toContain('not of this plan');
  expect(drawn('wreck', { widthMm: 233 }).map(saysOf).join(' ')).toContain('no circuit feeds it yet');
});

test('a boat without a bank says what to enter', () => {
  expect(drawn('no bank', { widthMm: 233 }).map(saysOf).join(' ')).toContain('no circuit feeds it yet');
  const bare = aBoat().with({
    supply: { banks: [], panels: [], dcdc: [] },
    kit: [],
    buses: [],
    needs: [],
    joins: [],
  }).boat;
  const [page] = oneLine({ boat: bare, plan: quickPlan(bare), widthMm: 233 });
  expect(page === undefined ? '' : saysOf(page)).toContain('No battery bank is entered yet');
});

test('the work at a bank has its caution beside it, and lithium its own', () => {
  const says = drawn('gannet', { widthMm: 520 }).map(saysOf).join(' ');
  expect(says).toContain('Disconnect the negative first');
  const lithium = aBoat().change((draft) => {
    for (const bank of draft.supply.banks) bank.chemistry = 'lifepo4';
  }).boat;
  const [page] = oneLine({ boat: lithium, plan: quickPlan(lithium), widthMm: 520 });
  expect(page === undefined ? '' : saysOf(page)).toContain('high-interrupt fuse at the battery');
});

test('a unit that too few volts reach is told in words, not by colour alone', () => {
  const needy = aBoat().sheet('small-display', (sheet) => {
    for (const power of sheet.power ?? []) if (power.port === 'dc') power.minV = 11.79;
  }).boat;
  const [page] = oneLine({ boat: needy, plan: quickPlan(needy), widthMm: 233 });
  expect(page === undefined ? '' : saysOf(page)).toContain('too few: it needs 11.79 V');
});

test('lengths are in feet and wires in gauges where asked; with metres go mm², and both sizes where nobody asked', () => {
  const [boat, known] = [boats.gannet, plans.get('gannet')];
  if (boat === undefined || known === undefined) throw new Error('No Gannet.');
  const [page] = oneLine({ boat, plan: known, widthMm: 233, units: 'feet' });
  const says = page === undefined ? '' : saysOf(page);
  expect(says).toMatch(/\b12 AWG, 30 ft 3 in/);
  expect(says).not.toContain('4 mm²');
  expect(says).not.toMatch(/\d m\b/);
  const metric = oneLine({ boat, plan: known, widthMm: 233, units: 'metres' }).map(saysOf).join(' ');
  expect(metric).toContain('4 mm², ');
  expect(metric).not.toContain('AWG');
  expect(oneLine({ boat, plan: known, widthMm: 233 }).map(saysOf).join(' ')).toContain('4 mm² (12 AWG), ');
});

test('equal boats give equal bytes', () => {
  const bytes = (): string[] => drawn('gannet', { widthMm: 420, heightMm: 297 }).map((page) => toSvg(page, 'paper'));
  expect(bytes()).toEqual(bytes());
});
