import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layoutProblems } from '../src/core/backbone/layout-problems.ts';
import { indexBoat } from '../src/core/boat/boat-index.ts';
import type { Boat } from '../src/core/boat/boat-schema.ts';
import { canonicalBoat } from '../src/core/boat/canonical-boat.ts';
import { lengthMm, type Measure } from '../src/core/boat/measure.ts';
import { lastPhase } from '../src/core/boat/phase.ts';
import { readBoat } from '../src/core/boat/read-boat.ts';
import { joinsOf } from '../src/core/joins/joins-of.ts';
import { planBuses } from '../src/core/plan-buses.ts';
import { planLines } from '../src/core/plan-lines.ts';
import type { LineEntry } from '../src/core/plan-shape.ts';
import { orderOf } from '../src/core/shopping/order-of.ts';
import { brokenAsBought, brokenLimits } from '../src/core/shopping/trunk-as-bought.ts';
import { wayLengths } from '../src/core/ways/way-lengths.ts';

const load = (name: string): Boat =>
  canonicalBoat(readBoat(readFileSync(resolve(import.meta.dirname, `../examples/${name}/${name}.boat.json`), 'utf8')));

const piecesM = ({ pieces = [] }: LineEntry): number => pieces.reduce((sumM, { lengthM }) => sumM + lengthM, 0);

/** A boat with its layouts and its order. */
const ordered = (name: string) => {
  const index = indexBoat(load(name));
  const joins = joinsOf(index, lastPhase(index.boat));
  const buses = planBuses({ index, problems: layoutProblems(index.boat), layouts: new Map(), joins });
  const { lines, ways } = planLines({ index, buses, joins });
  return { boat: index.boat, buses, joins, order: orderOf({ index, buses, lines, ways }) };
};

/** A length somewhere inside its doubt, now known to the millimetre. */
const taped = (length: Measure, share: number): Measure => {
  const { shortestMm, longestMm } = lengthMm(length);
  return { valueM: Math.round(shortestMm + share * (longestMm - shortestMm)) / 1000, how: 'taped', lessM: 0, moreM: 0 };
};

/** The boat with every way and every tail taped, each somewhere inside its doubt; a share is 0 for the shortest, 1 for the longest. */
const allTaped = (boat: Boat, shareOf: (n: number) => number): Boat => ({
  ...boat,
  ways: boat.ways.map((way, n) => ({ ...way, length: taped(way.length, shareOf(n)) })),
  kit: boat.kit.map((unit, n) =>
    unit.tail === undefined ? unit : { ...unit, tail: taped(unit.tail, shareOf(boat.ways.length + n)) },
  ),
});

/** The length of a line on the route it was given, with the ways and tails of another state of the boat, metres. */
const heldLengths = (before: Boat, after: Boat): ((line: LineEntry) => number) => {
  const lengthsOf = (boat: Boat): ReadonlyMap<string, number> => {
    const places = new Map(boat.places.map((place) => [place.id, place]));
    const ways = [...wayLengths({ ways: boat.ways, places })].map(([id, { mm }]): [string, number] => [id, mm]);
    const tails = boat.kit.flatMap(({ id, tail }): [string, number][] =>
      tail === undefined ? [] : [[id, lengthMm(tail).nominalMm]],
    );
    return new Map([...ways, ...tails]);
  };
  const [was, is] = [lengthsOf(before), lengthsOf(after)];
  return (line) => {
    const units = line.kind === 'trunk' ? [] : [line.from, line.to].map((end) => end.split('.')[0] ?? end);
    const moreMm = [...line.ways, ...units].reduce((sumMm, id) => sumMm + (is.get(id) ?? 0) - (was.get(id) ?? 0), 0);
    return line.lengthM + moreMm / 1000;
  };
};

describe.each(['gannet', 'sandpiper', 'bonxie'])('the order of the %s', (name) => {
  const { boat, buses, joins, order } = ordered(name);
  const bought = new Map(order.lines.filter(({ pieces }) => pieces !== undefined).map((line) => [line.id, line]));

  test('holds something to check', () => {
    expect(bought.size).toBeGreaterThan(10);
    expect(order.shopping.length).toBeGreaterThan(20);
  });

  test('covers every line and keeps every limit, whatever the tape says inside the doubts', () => {
    const shares = fc.array(fc.constantFrom(0, 0.2, 0.5, 0.8, 1), { minLength: 200, maxLength: 200 });
    fc.assert(
      fc.property(shares, (share) => {
        const found = allTaped(boat, (n) => share[n % share.length] ?? 0);
        const lengthOn = heldLengths(boat, found);
        const short = [...bought.values()].filter((line) => lengthOn(line) > piecesM(line) + 1e-9);
        expect(short.map(({ id }) => id)).toEqual([]);
        for (const problem of layoutProblems(found)) {
          const bus = buses.find((entry) => entry.problem.bus === problem.bus);
          if (bus === undefined || bus.entry.layout.broken.length > 0) continue;
          expect(brokenLimits(problem, { ...bus.layout, problem: problem.hash })).toEqual([]);
        }
      }),
      { numRuns: 25 },
    );
  });

  test('keeps every limit with the trunk as long as it is bought', () => {
    for (const bus of buses) {
      if (bus.entry.layout.broken.length > 0) continue;
      const excess = new Map([...bought].map(([id, line]) => [id, Math.round((piecesM(line) - line.longestM) * 1000)]));
      expect(brokenAsBought(bus, excess)).toEqual([]);
    }
  });

  test('buys each drop as the piece its layout counted', () => {
    for (const { entry } of buses) {
      for (const { port, boughtM } of entry.drops) {
        const kit = port.split('.')[0];
        const line = order.lines.find(
          ({ kind, from, to }) => kind === 'drop' && [from, to].some((end) => end.startsWith(`${kit}.`)),
        );
        if (line?.pieces !== undefined) expect(piecesM(line)).toBeCloseTo(boughtM, 6);
      }
    }
  });

  test('has two terminators for each bus, one of either gender, and a tee for each device and the feed', () => {
    const count = (end: string): number =>
      order.shopping
        .filter(({ id, kind }) => kind === 'bus-part' && id.endsWith(end))
        .reduce((sum, entry) => sum + entry.count, 0);
    expect(count('-terminator-male')).toBe(buses.length);
    expect(count('-terminator-female')).toBe(buses.length);
    const tees = buses.flatMap(({ entry }) => entry.walk.flatMap((step) => step.tees)).length;
    expect(count('-tee')).toBe(tees);
  });

  test('costs the same but for clips whatever a guess turns out to be that the tape list leaves out', () => {
    const listed = new Set(order.tape.map(({ about }) => about));
    const cost = (shown: typeof order): number[] =>
      shown.shopping.filter(({ kind }) => kind !== 'fixing').map(({ count, each = 0 }) => count * each);
    const settled = allTaped(boat, () => 0);
    const found: Boat = {
      ...boat,
      ways: boat.ways.map((way, n) =>
        way.length.how === 'guessed' && !listed.has(way.id)
          ? { ...way, length: settled.ways[n]?.length ?? way.length }
          : way,
      ),
      kit: boat.kit.map((unit, n) => {
        const tail = settled.kit[n]?.tail;
        return unit.tail?.how === 'guessed' && !listed.has(unit.id) && tail !== undefined ? { ...unit, tail } : unit;
      }),
    };
    const index = indexBoat(found);
    const { lines, ways } = planLines({ index, buses, joins });
    expect(cost(orderOf({ index, buses, lines, ways }))).toEqual(cost(order));
  });
});
