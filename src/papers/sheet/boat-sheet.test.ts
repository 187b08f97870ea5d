import { expect, test } from 'vitest';
import { anExample } from '../../../tests/an-example.test-helper.ts';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { quickPlan } from '../../core/quick-plan.test-helper.ts';
import { type Box, contains, overlaps, textBox, textsOf } from '../drawing/box.ts';
import type { CircleShape, PathShape, Shape } from '../drawing/shapes.ts';
import { toSvg } from '../drawing/to-svg.ts';
import { type BoatSheet, boatSheet } from './boat-sheet.ts';
import { awayMm, balloonsOf, circleBox, clashes, focusableOf, leavesOf, piecesOf } from './on-the-sheet.test-helper.ts';

const aGannet = (): Boat => anExample('gannet');

const boats: Record<string, { boat: Boat; plan: Plan }> = Object.fromEntries(
  [aGannet(), anExample('sandpiper'), anExample('bonxie'), anExample('wreck'), aBoat().boat].map((boat) => [
    boat.name,
    { boat, plan: quickPlan(boat) },
  ]),
);

/** Sheets as the app asks for them in windows of 390, 1440 and 2560 px, and an A3 print. */
const sizes = [
  { widthMm: 103, heightMm: 142 },
  { widthMm: 242, heightMm: 207 },
  { widthMm: 538, heightMm: 350 },
  { widthMm: 420, heightMm: 297 },
];
const cases = Object.keys(boats).flatMap((name) => sizes.map((size) => ({ name, ...size })));

const drawn = new Map<string, BoatSheet>();

/** Each sheet is drawn once for all the questions asked about it. */
const sheetOf = (name: string, size: { widthMm: number; heightMm: number }): BoatSheet => {
  const key = `${name} ${size.widthMm} ${size.heightMm}`;
  const before = drawn.get(key);
  const known = boats[name];
  if (before !== undefined) return before;
  if (known === undefined) throw new Error(`No boat ${name}.`);
  const sheet = boatSheet({ ...known, ...size });
  drawn.set(key, sheet);
  return sheet;
};

test.each(cases)('on $name no two texts touch at $widthMm mm', ({ name, ...size }) => {
  const texts = textsOf(sheetOf(name, size).drawing.shapes);
  expect(texts.length).toBeGreaterThan(20);
  expect(clashes(texts, textBox, (text) => text.text)).toEqual([]);
});

test.each(cases)('on $name no balloon touches another or a text but its own at $widthMm mm', ({ name, ...size }) => {
  const { shapes } = sheetOf(name, size).drawing;
  const balloons = balloonsOf(shapes);
  expect(clashes(balloons, circleBox, (circle) => circle.about?.join() ?? '')).toEqual([]);
  const inside = (text: ReturnType<typeof textsOf>[number], circle: CircleShape): boolean =>
    contains(circleBox(circle), textBox(text)) && /^\d+$/.test(text.text);
  for (const circle of balloons) {
    const touched = textsOf(shapes).filter(
      (text) => overlaps(textBox(text), circleBox(circle)) && !inside(text, circle),
    );
    expect(touched.map((text) => text.text)).toEqual([]);
  }
});

/** A line of the plan: its ids have a kind and two ends. */
const isWiring = (shape: Shape): shape is PathShape =>
  shape.kind === 'path' && shape.stroke !== undefined && (shape.about ?? []).some((id) => /^[a-z-]+:.+~/.test(id));

/** A drop touches the rim of its balloon; nothing goes deeper than this. */
const rimMm = 0.15;

const underBalloons = (shapes: readonly Shape[]): string[] => {
  const wiring = leavesOf(shapes)
    .filter(isWiring)
    .flatMap((path) => piecesOf(path).map((piece) => ({ piece, about: path.about?.[0] })));
  expect(wiring.length).toBeGreaterThan(0);
  return balloonsOf(shapes).flatMap((circle: CircleShape) =>
    wiring
      .filter(({ piece }) => awayMm([circle.xMm, circle.yMm], piece) < circle.radiusMm - rimMm)
      .map(({ about }) => `${circle.about?.join()} over ${about}`),
  );
};

test.each(cases)('on $name no balloon covers a line at $widthMm mm', ({ name, ...size }) => {
  expect(underBalloons(sheetOf(name, size).drawing.shapes)).toEqual([]);
});

test.each(cases)('on $name everything written lies on the sheet at $widthMm mm', ({ name, ...size }) => {
  const { drawing } = sheetOf(name, size);
  const sheet: Box = { leftMm: 0, topMm: 0, rightMm: drawing.widthMm, bottomMm: drawing.heightMm };
  const outside = textsOf(drawing.shapes).filter((text) => !contains(sheet, textBox(text)));
  expect(outside.map((text) => text.text)).toEqual([]);
  expect(balloonsOf(drawing.shapes).filter((circle) => !contains(sheet, circleBox(circle)))).toEqual([]);
});

test.each(cases)('on $name no letter is smaller than 11 px at $widthMm mm', ({ name, ...size }) => {
  const leastMm = (11 * 25.4) / 96;
  const small = textsOf(sheetOf(name, size).drawing.shapes).filter((text) => text.sizeMm < leastMm);
  expect(small.map((text) => text.text)).toEqual([]);
});

test('every unit that stays or comes has its number and words somewhere on the Gannet sheet', () => {
  const { drawing, balloons } = sheetOf('Gannet', { widthMm: 240, heightMm: 220 });
  const staying = aGannet().kit.filter((unit) => unit.fate !== 'goes');
  expect(balloons.map((balloon) => balloon.about[0]).sort()).toEqual(staying.map((unit) => unit.id).sort());
  const written = textsOf(drawing.shapes).map((text) => text.text);
  for (const { number, label } of balloons) {
    expect(written, label).toContain(String(number));
    const joined = written.join(' ');
    expect(joined).toContain(label);
  }
});

test('on a phone nothing is left out of the views of a small boat, and hardly anything of a crowded one', () => {
  const lostOf = (name: string): number => {
    const { drawing, balloons } = sheetOf(name, { widthMm: 103, heightMm: 142 });
    const views = drawing.shapes.filter((shape) => shape.kind === 'group' && shape.label?.startsWith('the boat from'));
    const numbered = new Set(focusableOf(views).flatMap((balloon) => balloon.about ?? []));
    return balloons.filter(({ about }) => !numbered.has(about[0] ?? '')).length;
  };
  expect(['Gannet', 'Sandpiper'].map(lostOf)).toEqual([0, 0]);
  expect(lostOf('Wreck')).toBeLessThan(4);
  expect(lostOf('Bonxie')).toBeLessThan(15);
});

test('a unit with a fault has a filled balloon, a unit with mere advice has not', () => {
  const { boat } = aBoat();
  const bare = quickPlan(boat);
  const finding = (level: 'fault' | 'advice', unit: string): Plan['findings'][number] => ({
    id: `${level}-${unit}`,
    rule: 'test',
    level,
    about: [`${unit}.n2k`],
    says: 'It is so.',
  });
  const marked: Plan = { ...bare, findings: [finding('fault', 'gnss'), finding('advice', 'display')] };
  const { drawing, balloons } = boatSheet({ boat, plan: marked, widthMm: 240, heightMm: 200 });
  const filled = new Set(
    balloonsOf(drawing.shapes)
      .filter((circle) => circle.fill === 'accent')
      .flatMap((circle) => circle.about ?? []),
  );
  expect([...filled]).toEqual(['gnss']);
  expect(balloons.find((balloon) => balloon.about.includes('gnss'))?.findings).toEqual(['fault-gnss']);
});

const viewsOf = (name: string, widthMm: number): string[] =>
  sheetOf(name, { widthMm, heightMm: widthMm > 200 ? 207 : 142 })
    .drawing.shapes.flatMap((shape) => (shape.kind === 'group' ? (shape.label ?? '') : ''))
    .filter((label) => label.startsWith('the boat from'));

test('a boat with masts is drawn from astern as well, on a large screen and on a phone; one without is not', () => {
  expect([242, 103].map((widthMm) => viewsOf('Bonxie', widthMm).includes('the boat from astern'))).toEqual([
    true,
    true,
  ]);
  expect(viewsOf('Gannet', 242)).toEqual(['the boat from the side', 'the boat from above']);
});

test('a long and crowded boat gets a sheet larger than the window, so that every unit keeps its number', () => {
  const size = { widthMm: 242, heightMm: 207 };
  const { drawing, balloons } = sheetOf('Bonxie', size);
  expect(drawing.widthMm).toBeGreaterThan(size.widthMm);
  const views = drawing.shapes.filter((shape) => shape.kind === 'group' && shape.label?.startsWith('the boat from'));
  const numbered = new Set(focusableOf(views).flatMap((balloon) => balloon.about ?? []));
  expect(balloons.flatMap((balloon) => balloon.about).filter((unit) => !numbered.has(unit))).toEqual([]);
});

test('the print of the Gannet fits an A3 sheet', () => {
  const { drawing } = sheetOf('Gannet', { widthMm: 420, heightMm: 297 });
  expect([drawing.widthMm, drawing.heightMm]).toEqual([420, 297]);
});

test('in feet the axis, the trunk and its metres are feet, and nothing touches', () => {
  const boat = aGannet();
  const known = { boat, plan: quickPlan(boat) };
  const { drawing } = boatSheet({ ...known, widthMm: 242, heightMm: 207, units: 'feet' });
  const texts = textsOf(drawing.shapes);
  const written = texts.map((text) => text.text);
  expect(written).toContain('ft');
  expect(written).not.toContain('m');
  const [bus] = known.plan.buses;
  expect(written).toContain(`${((bus?.lengthM ?? 0) / 0.3048).toFixed(1)} ft`);
  expect(clashes(texts, textBox, (text) => text.text)).toEqual([]);
});

test('numbers rise from the stern forward', () => {
  const { balloons } = sheetOf('Gannet', { widthMm: 240, heightMm: 220 });
  const boat = aGannet();
  const xOf = new Map(boat.places.map((place) => [place.id, place.xM]));
  const placeOf = new Map(boat.kit.map((unit) => [unit.id, unit.place]));
  const xs = balloons.map((balloon) => xOf.get(placeOf.get(balloon.about[0] ?? '') ?? '') ?? Number.NaN);
  expect(xs).toEqual([...xs].sort((a, b) => a - b));
});

const reversed = (boat: Boat): Boat => ({
  ...boat,
  places: [...boat.places].reverse(),
  ways: [...boat.ways].reverse(),
  cables: [...boat.cables].reverse(),
  kit: [...boat.kit].reverse(),
  sheets: [...boat.sheets].reverse(),
  joins: [...boat.joins].reverse(),
  supply: { ...boat.supply, panels: [...boat.supply.panels].reverse() },
});

test.each(['Gannet', 'Tern'])(
  'the order of the lists in the file of %s leaves her sheet as it is, to the byte',
  (name) => {
    const known = boats[name];
    if (known === undefined) throw new Error(`No boat ${name}.`);
    const { boat } = known;
    const svg = (one: Boat): string =>
      toSvg(boatSheet({ boat: one, plan: quickPlan(one), widthMm: 240, heightMm: 200 }).drawing, 'day');
    expect(svg(reversed(boat))).toBe(svg(boat));
  },
);

test('a boat with nothing aboard still has her lines and her scale', () => {
  const boat = aBoat().with({ kit: [], joins: [], needs: [], places: [], ways: [], buses: [] }).boat;
  const bare: Boat = { ...boat, supply: { banks: [], panels: [], dcdc: [] } };
  const { drawing, balloons } = boatSheet({ boat: bare, plan: quickPlan(bare), widthMm: 240, heightMm: 200 });
  expect(balloons).toEqual([]);
  expect(textsOf(drawing.shapes).map((text) => text.text)).toContain('8');
  expect(toSvg(drawing, 'day')).not.toMatch(/NaN|Infinity|undefined/);
});
