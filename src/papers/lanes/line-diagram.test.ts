import { describe, expect, test } from 'vitest';
import { anExample } from '../../../tests/an-example.test-helper.ts';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { quickPlan } from '../../core/quick-plan.test-helper.ts';
import { cardBoat } from '../cards/card-boat.ts';
import { readingCard } from '../cards/reading-card.ts';
import { wayLights } from '../cards/way-lights.ts';
import { type Box, contains, insideMm, overlaps, textBox, textsOf } from '../drawing/box.ts';
import type { CircleShape, Drawing, GroupShape, Shape } from '../drawing/shapes.ts';
import { toSvg } from '../drawing/to-svg.ts';
import {
  awayMm,
  balloonsOf,
  circleBox,
  clashes,
  focusableOf,
  leavesOf,
  piecesOf,
} from '../sheet/on-the-sheet.test-helper.ts';
import { lineDiagram } from './line-diagram.ts';

const boats: Readonly<Record<string, { boat: Boat; plan: Plan }>> = Object.fromEntries(
  ['gannet', 'sandpiper', 'bonxie', 'wreck'].map((name) => {
    const boat = anExample(name);
    return [boat.name, { boat, plan: quickPlan(boat) }];
  }),
);
const known = (name: string): { boat: Boat; plan: Plan } => {
  const found = boats[name];
  if (found === undefined) throw new Error(`No boat ${name}.`);
  return found;
};

/** As the app asks for it in windows of 390 and 1440 px, and on A3. */
const cases = Object.keys(boats).flatMap((name) => [103, 242, 420].map((widthMm) => ({ name, widthMm })));
const drawn = new Map<string, Drawing>();
const diagramOf = (name: string, widthMm: number): Drawing => {
  const key = `${name} ${widthMm}`;
  const drawing = drawn.get(key) ?? lineDiagram({ ...known(name), widthMm });
  drawn.set(key, drawing);
  return drawing;
};

describe.each(cases)('on $name at $widthMm mm', ({ name, widthMm }) => {
  const drawing = diagramOf(name, widthMm);
  const texts = textsOf(drawing.shapes);

  test('no two texts touch, nor any two balloons', () => {
    expect(texts.length).toBeGreaterThan(20);
    expect(clashes(texts, textBox, (text) => text.text)).toEqual([]);
    expect(clashes(balloonsOf(drawing.shapes), circleBox, (circle) => circle.about?.join() ?? '')).toEqual([]);
  });

  test('no balloon touches a text but its own number', () => {
    const touched = balloonsOf(drawing.shapes).flatMap((circle: CircleShape) =>
      texts
        .filter((text) => overlaps(textBox(text), circleBox(circle)))
        .filter((text) => !(contains(circleBox(circle), textBox(text)) && /^\d+$/.test(text.text)))
        .map(({ text }) => `${text} under ${circle.about?.join()}`),
    );
    expect(touched).toEqual([]);
  });

  test('no line runs through a text, and none under a balloon that is not its own', () => {
    const lines = leavesOf(drawing.shapes).flatMap((shape) =>
      shape.kind === 'path' && shape.stroke !== undefined && (shape.about ?? []).some((id) => id.includes('~'))
        ? piecesOf(shape).map((piece) => ({ piece, about: shape.about?.[0] }))
        : [],
    );
    expect(lines.length).toBeGreaterThan(10);
    const boxes: { box: Box; what: string }[] = [
      ...texts.map((text) => ({ box: textBox(text), what: text.text })),
      ...balloonsOf(drawing.shapes).map((circle) => ({ box: circleBox(circle), what: `balloon ${circle.about?.[0]}` })),
    ];
    const through = boxes.flatMap(({ box, what }) =>
      lines.filter(({ piece }) => insideMm(box, ...piece) > 0.2).map(({ about }) => `${about} through ${what}`),
    );
    expect(through).toEqual([]);
  });

  test('everything lies on the sheet, and no letter is smaller than 11 px', () => {
    const sheet: Box = { leftMm: 0, topMm: 0, rightMm: drawing.widthMm, bottomMm: drawing.heightMm };
    expect(texts.filter((text) => !contains(sheet, textBox(text))).map(({ text }) => text)).toEqual([]);
    expect(balloonsOf(drawing.shapes).filter((circle) => !contains(sheet, circleBox(circle)))).toEqual([]);
    expect(texts.filter(({ sizeMm }) => sizeMm < (11 * 25.4) / 96)).toEqual([]);
  });

  test('every line of data of the plan is drawn, and every unit with its number and its words', () => {
    const ids = new Set(leavesOf(drawing.shapes).flatMap(({ about }) => about ?? []));
    const data = known(name).plan.lines.filter(({ kind }) => kind !== 'feed' && kind !== 'feeder');
    expect(data.filter(({ id }) => !ids.has(id)).map(({ id }) => id)).toEqual([]);
    const units = known(name).boat.kit.filter(({ fate }) => fate !== 'goes');
    expect(units.filter(({ id }) => !ids.has(id)).map(({ id }) => id)).toEqual([]);
  });
});

const isAgain = ({ label }: GroupShape): boolean => label?.includes('as in another lane') === true;

test('each unit has one place of its own; elsewhere its number stands in a broken ring', () => {
  for (const { boat, plan: own } of [known('Gannet'), known('Bonxie')]) {
    const balloons = focusableOf(lineDiagram({ boat, plan: own, widthMm: 420 }).shapes);
    const places = balloons.filter((one) => !isAgain(one)).map(({ about }) => about?.[0] ?? '');
    expect(new Set(places).size).toBe(places.length);
    for (const again of balloons.filter(isAgain)) expect(places).toContain(again.about?.[0]);
  }
});

test('a screen of the Gannet on the bus and on Ethernet stands once where the lanes lie under each other', () => {
  const countOf = (widthMm: number): number =>
    focusableOf(diagramOf('Gannet', widthMm).shapes).filter(({ about }) => about?.[0] === 'mfd-helm').length;
  expect([242, 103].map(countOf)).toEqual([1, 2]);
});

test('the bridge between the two buses of the Bonxie stands on both', () => {
  const bridges = focusableOf(diagramOf('Bonxie', 242).shapes).filter(({ about }) => about?.[0] === 'bridge-gw');
  expect(bridges.map(isAgain)).toEqual([false, true]);
});

test('a converter is a square with a diagonal, and both its languages are named', () => {
  const group = focusableOf(diagramOf('Gannet', 242).shapes).find(({ about }) => about?.[0] === 'eng-gw-port');
  expect(group?.shapes.filter(({ kind }) => kind === 'path')).toHaveLength(2);
  expect(textsOf(group?.shapes ?? []).map(({ text }) => text)).toContainEqual(
    expect.stringContaining('2000/engine bus'),
  );
});

test('the trunk of a bus that runs along the boat has its tees in the order of their places', () => {
  const { plan: own, boat } = known('Gannet');
  const xOf = new Map(boat.places.map(({ id, xM }) => [id, xM]));
  const placeOf = new Map(boat.kit.map(({ id, place }) => [id, place]));
  const onBus = new Set(
    own.buses.flatMap(({ walk }) => walk.flatMap(({ tees }) => tees.map((tee) => tee.split('.')[0]))),
  );
  const circles = balloonsOf(diagramOf('Gannet', 420).shapes).filter(({ about }) => onBus.has(about?.[0] ?? ''));
  const stern = circles.find(({ about }) => about?.[0] === 'eng-gw-port')?.xMm ?? 0;
  const bow = circles.find(({ about }) => about?.[0] === 'mfd-fly')?.xMm ?? 0;
  expect(xOf.get(placeOf.get('eng-gw-port') ?? '') ?? 0).toBeLessThan(xOf.get(placeOf.get('mfd-fly') ?? '') ?? 0);
  expect(stern).toBeLessThan(bow);
});

test('an arrow stands at the one who hears', () => {
  const arrows = leavesOf(diagramOf('Gannet', 242).shapes).filter(
    (shape) => shape.kind === 'path' && shape.fill === 'data' && shape.stroke === undefined,
  );
  const on = (line: string): number => arrows.filter(({ about }) => about?.includes(line)).length;
  // the converter and the old pilot computer talk both ways, the radio only hears
  expect(on('pair:conv-pilot.data~pilot-computer.data')).toBe(2);
  expect(on('pair:conv-fly.data~vhf-2.data')).toBe(1);
});

test('a unit joined by radio hangs on what makes the network, by dots and a letter of their own', () => {
  const { boat } = known('Sandpiper');
  const wifi = { id: 'air', kind: 'wifi' as const, hold: 'fixed' as const };
  const members = ['mux', 'plotter'].map((kit) => ({ kit, port: 'radio', as: 'both' as const }));
  const joined: Boat = { ...boat, joins: [...boat.joins, { ...wifi, members }] };
  const { shapes } = lineDiagram({ boat: joined, plan: quickPlan(joined), widthMm: 242 });
  const air = leavesOf(shapes).filter(({ about }) => about?.includes('air'));
  expect(air.some((shape) => shape.kind === 'path' && shape.stroke?.dashMm !== undefined)).toBe(true);
  expect(air.some((shape) => shape.kind === 'text' && shape.text === 'R')).toBe(true);
  expect(textsOf(shapes).map(({ text }) => text)).toContain('by radio');
  expect(clashes(textsOf(shapes), textBox, (text) => text.text)).toEqual([]);
});

describe('the way of a reading', () => {
  test.each(['Gannet', 'Sandpiper', 'Bonxie'])(
    'of the %s lights a line of the diagram for each of its lines',
    (name) => {
      const { boat, plan: own } = known(name);
      const index = cardBoat(boat);
      const ids = new Set(leavesOf(diagramOf(name, 242).shapes).flatMap(({ about }) => about ?? []));
      const arriving = own.readings.filter(({ arrives }) => arrives);
      expect(arriving.length).toBeGreaterThan(5);
      for (const { by } of arriving) for (const id of wayLights(index, own, by)) expect(ids, id).toContain(id);
    },
  );

  test('lights the trunk without a gap, also between tees at one place', () => {
    const { boat, plan: own } = known('Gannet');
    const bus = own.buses[0];
    const step = bus?.walk.find(({ tees }) => tees.filter((tee) => tee.endsWith('.n2k')).length > 1);
    const [one = '', other = ''] = step?.tees.filter((tee) => tee.endsWith('.n2k')) ?? [];
    const lights = wayLights(cardBoat(boat), own, [one, other]);
    const tees = lights.filter((id) => id.startsWith('tees:'));
    expect(tees).toHaveLength(1);
    const lit = leavesOf(diagramOf('Gannet', 242).shapes).filter(({ about }) => about?.includes(tees[0] ?? ''));
    expect(lit).toHaveLength(1);
  });

  test('that breaks has a cross on its very link, and the card of the reading lights it', () => {
    const { boat } = known('Gannet');
    const cut: Boat = {
      ...boat,
      joins: boat.joins.map((join) => (join.id === 'pair-from-pilot' ? { ...join, hold: 'never' as const } : join)),
    };
    const own = quickPlan(cut);
    const card = readingCard(cardBoat(cut), own, { reading: 'rudder' });
    const drawing = lineDiagram({ boat: cut, plan: own, widthMm: 242 });
    const id = 'break:pilot-computer.out~conv-pilot.in';
    expect(card?.ends.flatMap(({ lights }) => lights)).toContain(id);
    const [cross, ...more] = leavesOf(drawing.shapes).filter(({ about }) => about?.includes(id));
    expect(more).toEqual([]);
    const [[from] = [[0, 0] as const]] = cross?.kind === 'path' ? piecesOf(cross) : [];
    const pair = leavesOf(drawing.shapes).flatMap((shape) =>
      shape.kind === 'path' && shape.about?.includes('pair:conv-pilot.data~pilot-computer.data') ? piecesOf(shape) : [],
    );
    expect(Math.min(...pair.map((piece) => awayMm(from, piece)))).toBeLessThan(1.5);
    expect(
      textsOf(drawing.shapes)
        .map(({ text }) => text)
        .join(' '),
    ).toContain('× Here breaks the way of: rudder');
  });
});

const reversed = (boat: Boat): Boat => ({
  ...boat,
  places: [...boat.places].reverse(),
  ways: [...boat.ways].reverse(),
  kit: [...boat.kit].reverse(),
  sheets: [...boat.sheets].reverse(),
  joins: [...boat.joins].reverse(),
});

test('the order of the lists in the file leaves the diagram as it is, to the byte', () => {
  const svg = (boat: Boat): string => toSvg(lineDiagram({ boat, plan: quickPlan(boat), widthMm: 242 }), 'day');
  const { boat } = known('Gannet');
  expect(svg(reversed(boat))).toBe(svg(boat));
});

test('a boat with nothing aboard is told what to do', () => {
  const boat = aBoat().with({ kit: [], joins: [], needs: [], places: [], ways: [], buses: [] }).boat;
  const bare: Boat = { ...boat, supply: { banks: [], panels: [], dcdc: [] } };
  const shapes: readonly Shape[] = lineDiagram({ boat: bare, plan: quickPlan(bare), widthMm: 242 }).shapes;
  expect(textsOf(shapes).map(({ text }) => text)).toContainEqual(expect.stringContaining('No line of data yet.'));
});
