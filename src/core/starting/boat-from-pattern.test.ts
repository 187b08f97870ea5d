import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Boat } from '../boat/boat-schema.ts';
import { readBoat } from '../boat/read-boat.ts';
import { writeBoat } from '../boat/write-boat.ts';
import { type HullMeasuresId, hullMeasures } from '../facts/hull-measures.ts';
import { type HullPart, hullPattern, type OutlineStep } from '../facts/hull-patterns.ts';
import { plan } from '../plan.ts';
import { boatFromPattern, type PatternAsked } from './boat-from-pattern.ts';
import { patternOf } from './pattern-of.ts';
import { boatPatterns } from './patterns/index.ts';

const ids = boatPatterns.map(({ id }) => id);

type Point = readonly [number, number];

const curvePoints = (
  from: Point,
  [, ax, ay, bx, by, x, y]: Extract<OutlineStep, readonly ['C', ...number[]]>,
): Point[] =>
  Array.from({ length: 24 }, (_, at) => {
    const t = (at + 1) / 24;
    const weigh = (p: number, a: number, b: number, q: number): number =>
      (1 - t) ** 3 * p + 3 * (1 - t) ** 2 * t * a + 3 * (1 - t) * t * t * b + t ** 3 * q;
    return [weigh(from[0], ax, bx, x), weigh(from[1], ay, by, y)];
  });

/** The closed figures of a part, as corners. */
const figuresOf = ({ steps }: HullPart): Point[][] => {
  const figures: Point[][] = [];
  for (const step of steps) {
    const last = figures.at(-1);
    if (step[0] === 'M') figures.push([[step[1], step[2]]]);
    else if (step[0] === 'L') last?.push([step[1], step[2]]);
    else if (step[0] === 'C') last?.push(...curvePoints(last.at(-1) ?? [0, 0], step));
  }
  return figures;
};

const isWithin = (figure: readonly Point[], [x, y]: Point): boolean =>
  figure.reduce((inside, [ax, ay], at) => {
    const [bx, by] = figure[(at + 1) % figure.length] ?? [0, 0];
    const crosses = ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax;
    return crosses ? !inside : inside;
  }, false);

/** Within the figures, or no farther from a point of them than places are rounded. */
const isInside = (parts: readonly HullPart[], [x, y]: Point): boolean => {
  const figures = parts
    .filter(({ role }) => role === 'hull' || role === 'house' || role === 'glass' || role === 'underbody')
    .flatMap(figuresOf);
  const near = [-0.011, 0, 0.011];
  return near.some((dx) => near.some((dy) => figures.some((figure) => isWithin(figure, [x + dx, y + dy]))));
};

const asked = (pattern: HullMeasuresId): fc.Arbitrary<PatternAsked> =>
  fc
    .record({
      lengthM: fc.double({ min: 4, max: 30, noNaN: true }),
      wider: fc.double({ min: 0.7, max: 1.4, noNaN: true }),
      higher: fc.double({ min: 0.4, max: 1.3, noNaN: true }),
    })
    .map(({ lengthM, wider, higher }) => {
      const { beamFactor, draftShare, airDraftShare } = hullMeasures[pattern];
      return {
        pattern,
        name: 'Drawn',
        lengthM,
        beamM: beamFactor * Math.cbrt(lengthM * lengthM) * wider,
        draftM: draftShare * lengthM * wider,
        airDraftM: airDraftShare * lengthM * higher,
      };
    });

const straightM = (boat: Boat, way: Boat['ways'][number]): number => {
  const [one, other] = way.ends.map((end) => boat.places.find(({ id }) => id === end));
  if (one === undefined || other === undefined) return Number.NaN;
  return Math.hypot(one.xM - other.xM, one.yM - other.yM, one.zM - other.zM);
};

test('there are at least the eleven kinds of boat somebody would look for, each under a name of its own', () => {
  expect(ids.length).toBeGreaterThanOrEqual(11);
  expect(new Set(boatPatterns.map(({ name }) => name)).size).toBe(ids.length);
  expect(new Set<string>(ids)).toEqual(new Set(Object.keys(hullMeasures)));
});

describe.each(ids)('a boat from the pattern %s', (pattern) => {
  const boat = boatFromPattern({ pattern, name: 'New boat' });

  test('reads as a boat file and writes back the same', () => {
    expect(readBoat(writeBoat(boat))).toEqual(boat);
    expect(readBoat(JSON.stringify(boat))).toEqual(boat);
  });

  test('has no danger, no fault and few doubts while nothing is aboard', () => {
    const { findings } = plan(boat, new Map());
    expect(findings.filter(({ level }) => level === 'danger' || level === 'fault')).toEqual([]);
    expect(findings.filter(({ level }) => level === 'doubt').map(({ id }) => id).length).toBeLessThanOrEqual(3);
  });

  test('has every place inside the hull drawn, from the side and from above, whatever her measures', () => {
    fc.assert(
      fc.property(asked(pattern), (measures) => {
        const drawn = boatFromPattern(measures);
        const { side, top } = hullPattern(drawn.hull);
        for (const { id, outside } of patternOf(pattern).places) {
          const place = drawn.places.find((one) => one.id === id);
          expect(place, id).toBeDefined();
          if (place === undefined || outside === true) continue;
          expect([id, 'from the side', isInside(side, [place.xM, place.zM])]).toEqual([id, 'from the side', true]);
          expect([id, 'from above', isInside(top, [place.xM, place.yM])]).toEqual([id, 'from above', true]);
        }
      }),
      { numRuns: 25 },
    );
  });

  test('has nothing above her air draft, and what is outside the hull within a twentieth of her length', () => {
    fc.assert(
      fc.property(asked(pattern), (measures) => {
        const drawn = boatFromPattern(measures);
        for (const { id, xM, yM, zM } of drawn.places) {
          expect([id, zM <= drawn.hull.airDraft.valueM + 0.011]).toEqual([id, true]);
          expect([id, xM >= -0.05 * drawn.hull.lengthM && xM <= drawn.hull.lengthM]).toEqual([id, true]);
          expect([id, Math.abs(yM) <= drawn.hull.beamM / 2]).toEqual([id, true]);
        }
      }),
      { numRuns: 25 },
    );
  });

  test('has every way assumed, guessed with its doubt, and never shorter than the straight line', () => {
    fc.assert(
      fc.property(asked(pattern), (measures) => {
        const drawn = boatFromPattern(measures);
        for (const way of drawn.ways) {
          const { valueM, how, lessM = 0, moreM = 0 } = way.length;
          expect([way.id, way.known, how]).toEqual([way.id, 'assumed', 'guessed']);
          expect(valueM - lessM).toBeGreaterThanOrEqual(straightM(drawn, way) - 1e-9);
          expect(moreM).toBeGreaterThanOrEqual(0.3 * valueM - 0.006);
        }
      }),
      { numRuns: 25 },
    );
  });

  test('joins every place to every other by her ways', () => {
    const reached = new Set([boat.places[0]?.id]);
    for (let before = 0; before < reached.size; ) {
      before = reached.size;
      for (const { ends } of boat.ways)
        if (ends.some((end) => reached.has(end))) for (const end of ends) reached.add(end);
    }
    expect(boat.places.filter(({ id }) => !reached.has(id))).toEqual([]);
  });
});
