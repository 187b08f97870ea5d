import fc from 'fast-check';
import { aDevice, aGrade, aPlace, aProblem, aWay } from './a-problem.test-helper.ts';
import type { Problem } from './problem.ts';

const placeIds = ['a', 'b', 'c', 'd', 'e', 'f'];
const usually = <Value>(value: Value, seldom: fc.Arbitrary<Value>): fc.Arbitrary<Value> =>
  fc.oneof({ weight: 7, arbitrary: fc.constant(value) }, { weight: 1, arbitrary: seldom });

const wayOwn = fc.record({
  mm: fc.integer({ min: 2, max: 40 }).map((n) => n * 100),
  moreMm: fc.integer({ min: 0, max: 5 }).map((n) => n * 100),
  trunk: fc.constantFrom<0 | 1 | 2>(2, 2, 2, 1, 0),
  drop: usually(true, fc.constant(false)),
  extra: usually(0, fc.integer({ min: 0, max: 1500 })),
});

/** A boat of 3 to 6 places that hang together as a tree, and up to two ways more; every limit binds now and then. */
export const tinyProblem: fc.Arbitrary<Problem> = fc.integer({ min: 3, max: 6 }).chain((size) => {
  const ids = placeIds.slice(0, size);
  const places = fc.tuple(
    ...ids.map((id) =>
      fc.record({
        id: fc.constant(id),
        tees: fc.constantFrom(true, true, true, false),
        end: fc.constantFrom(true, true, true, false),
        spares: fc.constantFrom(0, 0, 0, 0, 1, 2),
      }),
    ),
  );
  const tree = fc.tuple(
    ...ids
      .slice(1)
      .map((b, n) => fc.record({ a: fc.constantFrom(...ids.slice(0, n + 1)), b: fc.constant(b), own: wayOwn })),
  );
  const more = fc.array(fc.record({ a: fc.constantFrom(...ids), b: fc.constantFrom(...ids), own: wayOwn }), {
    maxLength: size > 5 ? 1 : 2,
  });
  const devices = fc.array(
    fc.record({
      place: fc.constantFrom(...ids),
      tailMm: fc.integer({ min: 0, max: 6 }).map((n) => n * 100),
      len: fc.integer({ min: 1, max: 8 }),
      minMv: usually(9000, fc.integer({ min: 10_800, max: 11_490 })),
    }),
    { minLength: 1, maxLength: size > 4 ? 3 : 4 },
  );
  const limits = fc.record({
    dropMm: usually(
      6000,
      fc.integer({ min: 8, max: 40 }).map((n) => n * 100),
    ),
    dropsMm: usually(
      78_000,
      fc.integer({ min: 10, max: 80 }).map((n) => n * 100),
    ),
    warnMm: usually(
      100_000,
      fc.integer({ min: 20, max: 120 }).map((n) => n * 100),
    ),
    moreMm: usually(0, fc.constant(1000)),
    maxMa: usually(
      3000,
      fc.integer({ min: 5, max: 20 }).map((n) => n * 50),
    ),
    lostMv: usually(
      1500,
      fc.integer({ min: 2, max: 40 }).map((n) => n * 10),
    ),
    pieces: usually<number[]>([], fc.constant([500, 1000, 2000, 5000])),
    leadPerM: fc.constantFrom(0, 200, 700),
    trunkPerM: fc.constantFrom(200, 400, 400, 900),
    grades: fc.constantFrom(1, 1, 2),
    reach: fc.tuple(...ids.map(() => fc.integer({ min: 0, max: 50 }).map((n) => n * 100))),
  });
  return fc.record({ places, tree, more, devices, limits }).map(tinyFrom);
});

interface TinyWay {
  a: string;
  b: string;
  own: { mm: number; moreMm: number; trunk: 0 | 1 | 2; drop: boolean; extra: number };
}

const tinyFrom = ({
  places,
  tree,
  more,
  devices,
  limits,
}: {
  places: { id: string; tees: boolean; end: boolean; spares: number }[];
  tree: TinyWay[];
  more: TinyWay[];
  devices: { place: string; tailMm: number; len: number; minMv: number }[];
  limits: {
    dropMm: number;
    dropsMm: number;
    warnMm: number;
    moreMm: number;
    maxMa: number;
    lostMv: number;
    pieces: number[];
    leadPerM: number;
    trunkPerM: number;
    grades: number;
    reach: number[];
  };
}): Problem => {
  const { warnMm, maxMa, trunkPerM } = limits;
  const light = aGrade({ warnMm, failMm: warnMm + limits.moreMm, maxMa, trunkPerM });
  const mid = aGrade({
    ...light,
    id: 'mid',
    warnMm: 2 * warnMm,
    failMm: 2 * warnMm,
    maxMa: 4000,
    microOhmPerM: 14_200,
    trunkPerM: trunkPerM + 260,
    dropPerM: 750,
  });
  return aProblem({
    places: places.map((place) => aPlace(place.id, { ...place, spares: place.tees ? place.spares : 0 })),
    ways: [...tree, ...more]
      .filter(({ a, b }) => a !== b)
      .map(({ a, b, own: { moreMm, ...own } }, n) => {
        const [first, second] = a < b ? [a, b] : [b, a];
        return aWay({ id: `w${n}`, a: first, b: second, ...own, maxMm: own.mm + moreMm });
      }),
    devices: devices.map((own, n) => aDevice(`d${n}.n2k`, own.place, own)),
    grades: limits.grades === 1 ? [light] : [light, mid],
    limits: { dropMm: limits.dropMm, dropsMm: limits.dropsMm, devices: 50 },
    pieces: limits.pieces,
    feed: {
      mv: 11_500,
      lostMv: { warn: limits.lostMv, fail: limits.lostMv + 20 },
      leadPerM: limits.leadPerM,
      leadMicroOhmPerM: 14_200,
      reach: places.flatMap(({ id, tees }, n) => {
        const mm = limits.reach[n] ?? 0;
        return tees ? [{ place: id, mm, maxMm: mm + 100 }] : [];
      }),
    },
  });
};
