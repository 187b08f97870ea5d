import { describe, expect, test } from 'vitest';
import { anExample } from '../../../tests/an-example.test-helper.ts';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { sheetSizes } from '../../core/facts/sheet-sizes.ts';
import { quickPlan } from '../../core/quick-plan.test-helper.ts';
import { cardBoat } from '../cards/card-boat.ts';
import { insideMm, overlaps, textBox, textsOf } from '../drawing/box.ts';
import type { CircleShape, TextShape } from '../drawing/shapes.ts';
import { toSvg } from '../drawing/to-svg.ts';
import { labelOf } from '../lists/label-of.ts';
import type { PowerNode } from '../power/power-node.ts';
import { symbolWords as powerWords } from '../power/power-symbols.ts';
import { powerTree } from '../power/power-tree.ts';
import { awayMm, balloonsOf, circleBox, clashes } from '../sheet/on-the-sheet.test-helper.ts';
import { type BinderDrawing, type BinderRequest, binderDrawings } from './binder-drawings.ts';
import { symbolWords } from './boat/sheet-symbols.ts';
import {
  groupLabels,
  outsideFrame,
  smallestMm,
  thinnestMm,
  touching,
  wiringOf,
  withMovedText,
} from './on-the-paper.test-helper.ts';
import { leastTextMm } from './sheet-text.ts';
import { usualBoat } from './usual-boat.test-helper.ts';

const boats: Readonly<Record<string, () => Boat>> = {
  gannet: () => anExample('gannet'),
  sandpiper: () => anExample('sandpiper'),
  bonxie: () => anExample('bonxie'),
  wreck: () => anExample('wreck'),
  tern: () => aBoat().boat,
  'a new sloop': () => usualBoat('sloop-deck-stepped'),
  'a new trawler': () => usualBoat('trawler'),
  'a new catamaran': () => usualBoat('catamaran'),
};

const requestFor = (name: string, paper: BinderRequest['paper']): BinderRequest => {
  const boat = boats[name]?.();
  if (boat === undefined) throw new Error(`No boat ${name}.`);
  return { boat, plan: quickPlan(boat), paper, standing: 'as planned', dateIso: '2027-03-01' };
};

const cases = [
  ...Object.keys(boats).map((name) => ({ name, paper: 'a4' as const })),
  { name: 'gannet', paper: 'letter' as const },
  { name: 'bonxie', paper: 'a3' as const },
  { name: 'sandpiper', paper: 'tabloid' as const },
];

const drawn = new Map<string, BinderDrawing[]>();
const drawingsOf = (name: string, paper: BinderRequest['paper']): BinderDrawing[] => {
  const key = `${name} ${paper}`;
  const drawings = drawn.get(key) ?? binderDrawings(requestFor(name, paper));
  drawn.set(key, drawings);
  return drawings;
};

const isInside = (text: TextShape, { xMm, yMm }: CircleShape): boolean => {
  const box = textBox(text);
  return box.leftMm < xMm && box.rightMm > xMm && box.topMm < yMm && box.bottomMm > yMm;
};

describe.each(cases)('the drawings of $name on $paper', ({ name, paper }) => {
  const drawings = drawingsOf(name, paper);

  test('no text touches another', () => {
    expect(
      drawings.flatMap(({ name: sheet, drawing }) => touching(drawing).map((clash) => `${sheet}: ${clash}`)),
    ).toEqual([]);
  });

  test('every text stays in its frame', () => {
    expect(
      drawings.flatMap(({ name: sheet, drawing }) => outsideFrame(drawing).map((text) => `${sheet}: ${text}`)),
    ).toEqual([]);
  });

  test('no text is smaller than 7 point, and no stroke thinner than a copier keeps', () => {
    for (const { drawing } of drawings) {
      expect(smallestMm(drawing)).toBeGreaterThanOrEqual(leastTextMm);
      expect(thinnestMm(drawing)).toBeGreaterThanOrEqual(0.12);
    }
  });

  test('no words and no balloon lie on a line of the plan', () => {
    for (const { name: sheet, part, drawing } of drawings) {
      if (part !== 'boat') continue;
      const wiring = wiringOf(drawing);
      const letters = textsOf(drawing.shapes).filter(({ text }) => text.length > 1 && !/^[PWEMVAU]$/.test(text));
      const covered = letters.filter((text) => wiring.some(({ piece }) => insideMm(textBox(text), ...piece) > 0.3));
      expect(covered.map(({ text }) => `${sheet}: ${text}`)).toEqual([]);
      const struck = balloonsOf(drawing.shapes).filter(({ xMm, yMm, radiusMm }) =>
        wiring.some(({ piece }) => awayMm([xMm, yMm], piece) < radiusMm - 0.15),
      );
      expect(struck).toEqual([]);
    }
  });

  test('no balloon touches another, nor a text but its own', () => {
    for (const { name: sheet, drawing } of drawings) {
      const balloons = balloonsOf(drawing.shapes).filter(
        ({ fill, stroke }) => fill !== 'ink' && stroke?.dashMm === undefined,
      );
      expect(clashes(balloons, circleBox, ({ about }) => `${sheet}: ${about?.join()}`)).toEqual([]);
      const texts = textsOf(drawing.shapes);
      const touched = balloons.flatMap((circle) =>
        texts.filter(
          (text) => overlaps(textBox(text), circleBox(circle)) && !(/^\d+$/.test(text.text) && isInside(text, circle)),
        ),
      );
      expect(touched.map(({ text }) => `${sheet}: ${text}`)).toEqual([]);
    }
  });

  test('every symbol on a sheet has its word there', () => {
    const known = new Set<string>(Object.values(symbolWords));
    for (const { drawing } of drawings) {
      const written = textsOf(drawing.shapes).map(({ text }) => text);
      for (const word of groupLabels(drawing.shapes).filter((label) => known.has(label))) {
        expect(written).toContain(word);
      }
    }
  });

  test('every sheet is a whole paper, numbered, with what it says of itself', () => {
    for (const [at, { sheet, title, drawing }] of drawings.entries()) {
      expect(sheet).toBe(at + 1);
      expect([drawing.widthMm, drawing.heightMm]).toEqual([sheetSizes[paper].widthMm, sheetSizes[paper].heightMm]);
      const written = textsOf(drawing.shapes).map(({ text }) => text);
      expect(written).toEqual(
        expect.arrayContaining([`${sheet} of ${drawings.length}`, 'as planned', '2027-03-01', sheetSizes[paper].words]),
      );
      expect(written.join(' ')).toContain(title.split(' ').slice(0, 4).join(' '));
    }
  });
});

test('a label moved onto another is found', () => {
  const drawing = drawingsOf('sandpiper', 'a4')[0]?.drawing;
  if (drawing === undefined) throw new Error('No drawing.');
  expect(touching(drawing)).toEqual([]);
  expect(touching(withMovedText(drawing)).length).toBeGreaterThan(0);
});

test.each(['gannet', 'sandpiper', 'bonxie'])(
  'every way of %s with a line in it is named on a drawing of the boat, and every place has its code',
  (name) => {
    const { boat, plan: planned } = requestFor(name, 'a4');
    const written = new Set(
      drawingsOf(name, 'a4')
        .filter(({ part }) => part === 'boat')
        .flatMap(({ drawing }) => textsOf(drawing.shapes).map(({ text }) => text)),
    );
    const used = new Set(planned.lines.flatMap(({ ways }) => ways));
    expect(boat.ways.filter(({ id }) => used.has(id) && !written.has(id))).toEqual([]);
    const withKit = new Set(boat.kit.filter(({ fate }) => fate !== 'goes').map(({ place }) => place));
    const codes = [...written].filter((text) => /^P\d+$/.test(text));
    expect(codes.length).toBeGreaterThanOrEqual(withKit.size);
  },
);

test.each(['gannet', 'sandpiper', 'bonxie'])(
  'every place of %s with a unit has its picture, with every cable that ends there',
  (name) => {
    const { boat, plan: planned } = requestFor(name, 'a4');
    const sheets = drawingsOf(name, 'a4').filter(({ part }) => part === 'places');
    const units = boat.kit.filter(({ fate }) => fate !== 'goes');
    for (const place of new Set(units.map((unit) => unit.place))) {
      const own = sheets.filter(({ about }) => about.includes(place));
      expect(own.length, place).toBeGreaterThan(0);
      const written = own.flatMap(({ drawing }) => textsOf(drawing.shapes).map(({ text }) => text));
      const ending = planned.lines.filter(({ places }) => places[0] === place || places.at(-1) === place);
      const missing = ending.filter((line) => !written.includes(labelOf(line)));
      expect(missing.map(({ id }) => id)).toEqual([]);
    }
  },
);

test('every antenna and sensor of a boat has its height on the plan of antennas and sensors', () => {
  const { boat } = requestFor('gannet', 'a4');
  const sheets = drawingsOf('gannet', 'a4').filter(({ part }) => part === 'antennas');
  const written = sheets.flatMap(({ drawing }) => textsOf(drawing.shapes).map(({ text }) => text)).join(' ');
  const whip = boat.kit.find(({ id }) => id === 'ais-whip');
  const heightM = boat.places.find(({ id }) => id === whip?.place)?.zM ?? 0;
  expect(written).toContain(`${heightM.toFixed(2)} m over the water`);
  // arch, port bracket and starboard bracket: 3.30 m apart by their places in the boat file
  expect(written).toContain('3.30 m from 7');
});

test('lines over a match line are named on both of its sides', () => {
  const boat = drawingsOf('bonxie', 'a4').filter(({ title }) => title.startsWith('the boat from above'));
  expect(boat.length).toBeGreaterThan(1);
  const sides = boat.map(({ drawing }) =>
    textsOf(drawing.shapes)
      .map(({ text }) => text)
      .join(' '),
  );
  for (const [at, { sheet }] of boat.entries()) {
    if (at > 0) expect(sides[at - 1]).toContain(`sheet ${sheet}`);
  }
  const { plan: planned, boat: bonxie } = requestFor('bonxie', 'a4');
  const wayOver = bonxie.ways.find(({ id }) => id === 'b66');
  const lines = planned.lines.filter(({ ways }) => ways.includes(wayOver?.id ?? '')).length;
  expect(sides.filter((words) => words.includes(`b66, ${lines} lines:`)).length).toBeGreaterThan(1);
});

test.each(['gannet', 'sandpiper', 'bonxie'])(
  'every symbol of the power drawing of %s has its word on each of its sheets',
  (name) => {
    const { boat, plan: planned } = requestFor(name, 'a4');
    const kindsOf = (nodes: readonly PowerNode[]): string[] =>
      nodes.flatMap(({ symbols, children }) => [...symbols.map((symbol) => powerWords[symbol]), ...kindsOf(children)]);
    const words = new Set(kindsOf(powerTree(cardBoat(boat), planned)));
    expect(words.size).toBeGreaterThan(2);
    for (const { drawing } of drawingsOf(name, 'a4').filter(({ part }) => part === 'power')) {
      expect(textsOf(drawing.shapes).map(({ text }) => text)).toEqual(expect.arrayContaining([...words]));
    }
  },
);

test('the plug of a pilot in the deck is marked as a place where cables come apart', () => {
  const written = drawingsOf('sandpiper', 'a4')
    .filter(({ part }) => part === 'boat')
    .flatMap(({ drawing }) => textsOf(drawing.shapes).map(({ text }) => text));
  expect(written.filter((text) => text.startsWith('plug in the deck: C')).length).toBeGreaterThan(0);
  expect(written).toContain(symbolWords.parted);
});

test('in feet a way of 2.40 m is 7.9 ft long on the key', () => {
  const sheets = binderDrawings({ ...requestFor('gannet', 'letter'), units: 'feet' });
  const key = sheets.filter(({ part }) => part === 'key').flatMap(({ drawing }) => textsOf(drawing.shapes));
  const words = key.map(({ text }) => text).join(' ');
  expect(words).toContain('7.9 ft');
  expect(words).not.toContain('2.40 m');
});

test('a boat with nothing aboard still has her sheets', () => {
  const { boat } = aBoat().with({ kit: [], joins: [], needs: [], places: [], ways: [], buses: [] });
  const bare: Boat = { ...boat, supply: { banks: [], panels: [], dcdc: [] } };
  const sheets = binderDrawings({ boat: bare, plan: quickPlan(bare), paper: 'a4', standing: 'as fitted' });
  expect(sheets.map(({ part }) => part)).toEqual(['boat', 'boat', 'key', 'data', 'power']);
  for (const { drawing } of sheets) {
    expect(toSvg(drawing, 'paper')).not.toMatch(/NaN|Infinity|undefined/);
    expect(textsOf(drawing.shapes).map(({ text }) => text)).toEqual(expect.arrayContaining(['as fitted', 'not dated']));
  }
});

test('equal boats give equal bytes, whatever the order of their lists', () => {
  const asked = requestFor('sandpiper', 'a4');
  const svgs = (request: BinderRequest): string[] =>
    binderDrawings(request).map(({ drawing }) => toSvg(drawing, 'paper'));
  const boat: Boat = {
    ...asked.boat,
    places: [...asked.boat.places].reverse(),
    ways: [...asked.boat.ways].reverse(),
    cables: [...asked.boat.cables].reverse(),
    kit: [...asked.boat.kit].reverse(),
    sheets: [...asked.boat.sheets].reverse(),
  };
  expect(svgs({ ...asked, boat, plan: quickPlan(boat) })).toEqual(svgs(asked));
});
