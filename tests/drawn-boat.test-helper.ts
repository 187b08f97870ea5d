import { aBoat } from '../src/core/boat/a-boat.test-helper.ts';
import type { Boat, Kit, Place, Way } from '../src/core/boat/boat-schema.ts';
import type { Measure } from '../src/core/boat/measure.ts';

/** Whole numbers below `below`, the same again for the same seed. */
const diceFrom = (seed: number): ((below: number) => number) => {
  let state = (Math.imul(seed + 1, 0x9e3779b1) >>> 0) | 1;
  return (below) => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) % below;
  };
};

const at = <Entry>(list: readonly [Entry, ...Entry[]], n: number): Entry => list[n] ?? list[0];

/** A boat drawn by a seed: places along a tree of ways with a few more, lengths taped, from papers or guessed, some ways never seen. */
export const drawnBoat = (seed: number): Boat => {
  const dice = diceFrom(seed);
  const tern = aBoat().boat;
  const measure = (valueM: number): Measure => ({
    valueM,
    how: at(['guessed', 'guessed', 'papers', 'taped'], dice(4)),
  });
  const places = Array.from(
    { length: 5 + dice(5) },
    (_, n): Place => ({
      id: `p${n}`,
      name: `place ${n}`,
      xM: n,
      yM: dice(3) / 2,
      zM: dice(3) / 2,
      exposure: at(['dry', 'damp', 'spray'], dice(3)),
      reach: 'open',
      tees: n === 0 || dice(3) > 0,
    }),
  );
  const way = (a: number, b: number, n: number): Way => {
    const kind = at<Way['kind']>(['open', 'open', 'conduit', 'gland'], dice(4));
    return {
      id: `w${n}`,
      ends: [`p${a}`, `p${b}`],
      length: measure(Math.abs(a - b) + 1.5 + dice(20) / 10),
      kind,
      known: at(['seen', 'pulled', 'assumed', 'assumed'], dice(4)),
      ...(kind === 'open'
        ? {}
        : { bore: { mm: at([14, 20, 32, 50], dice(4)), how: at(['taped', 'guessed'], dice(2)) } }),
    };
  };
  const pairs = places.flatMap((_, n): [number, number][] => (n === 0 ? [] : [[dice(n), n]]));
  const more = Array.from({ length: 1 + dice(3) }, (): [number, number] => [dice(places.length), dice(places.length)]);
  const ways = [...pairs, ...more.filter(([a, b]) => a !== b)].map(([a, b], n) => way(a, b, n));
  const placed = (unit: Kit): Kit => ({
    ...unit,
    place: `p${dice(places.length)}`,
    fate: 'comes',
    ...(dice(2) === 0 ? {} : { tail: measure(0.4 + dice(10) / 10) }),
  });
  const { supply } = tern;
  return {
    ...tern,
    name: `Drawn ${seed}`,
    places,
    ways,
    kit: tern.kit.map(placed),
    supply: {
      ...supply,
      banks: supply.banks.map((bank) => ({ ...bank, place: 'p0' })),
      panels: supply.panels.map((panel) => ({ ...panel, place: 'p0' })),
      dcdc: supply.dcdc.map((converter) => ({ ...converter, place: 'p0' })),
    },
  };
};
