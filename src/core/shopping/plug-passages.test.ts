import { expect, test } from 'vitest';
import { indexBoat } from '../boat/boat-index.ts';
import type { Boat, Way } from '../boat/boat-schema.ts';
import { joinsOf } from '../joins/joins-of.ts';
import { anEye, aSwitch, netBoat } from '../joins/network-boat.test-helper.ts';
import { planLines } from '../plan-lines.ts';
import { orderOf } from './order-of.ts';

/** A camera and a switch at either end of a hole of some width, with or without a way round it. */
const order = (hole: Partial<Way>, { roundM, hour = 7500 }: { roundM?: number; hour?: number } = {}) => {
  const { boat } = netBoat({ hub: aSwitch('locker'), eye: anEye('step') }, ['hub.p1 eye.eth']);
  const taped = (valueM: number) => ({ valueM, how: 'taped', lessM: 0, moreM: 0 }) as const;
  const holed: Boat = {
    ...boat,
    prices: {
      currency: 'EUR',
      trunkPerM: 420,
      dropPerM: 480,
      tee: 2200,
      terminator: 1600,
      feed: 3800,
      feedLeadPerM: 160,
      hour,
    },
    places: [
      ...boat.places,
      { id: 'step', name: 'step', xM: 4, yM: -0.8, zM: 1, exposure: 'damp', reach: 'open', tees: false },
    ],
    ways: [
      ...boat.ways,
      {
        id: 'hole',
        ends: ['locker', 'step'],
        length: taped(0.5),
        kind: 'gland',
        known: 'seen',
        bore: { mm: 10, how: 'taped' },
        ...hole,
      },
      ...(roundM === undefined
        ? []
        : [
            { id: 'round', ends: ['locker', 'step'], length: taped(roundM), kind: 'open', known: 'seen' } satisfies Way,
          ]),
    ],
    pins: { routes: { 'ethernet:eye.plug-eth~hub.plug-p1': { ways: ['hole'], state: 'fixed' } } },
  };
  const index = indexBoat(holed);
  const { lines, ways } = planLines({ index, buses: [], joins: joinsOf(index, 1) });
  return orderOf({ index, buses: [], lines, ways });
};
const choices = (...asked: Parameters<typeof order>) => order(...asked).passages.flatMap((passage) => passage.choices);

test('a plug of 16 mm before a hole of 10 mm: fitted on the spot, or a wider hole, the cheaper first', () => {
  const [first, second, ...others] = choices({});
  expect(others).toEqual([]);
  expect(first?.does).toBe('fit-plug');
  // An hour at 75.00 for the hole; the hole that takes the plug is the next one sold.
  expect(second).toMatchObject({ does: 'wider-hole', cost: 7500, wideMm: 16 });
  expect(first?.cost).toBeLessThan(second?.cost ?? 0);
});

test('where a way round is cheaper still it comes first, with its ways; where it is long it comes last', () => {
  const near = choices({}, { roundM: 1.5 })[0];
  expect(near).toMatchObject({ does: 'other-way', ways: ['round'] });
  expect(choices({}, { roundM: 90 }).at(-1)?.does).toBe('other-way');
});

test('a rated bulkhead is not drilled, and a pipe not widened', () => {
  for (const hole of [{ through: 'fire' }, { through: 'watertight' }, { kind: 'conduit' }] as const) {
    expect(choices(hole).map(({ does }) => does)).not.toContain('wider-hole');
  }
});

test('the order holds cable by the metre and two plugs for a line drawn bare', () => {
  const items = order({})
    .shopping.filter(({ for: lines }) => lines.some((line) => line.startsWith('ethernet:')))
    .map(({ id }) => id);
  expect(items).toEqual(expect.arrayContaining(['ethernet-cable', 'plug-rj45-male']));
});

test('dearer hours never make a choice cheaper', () => {
  const costOf = (hour: number, does: string): number =>
    choices({}, { hour }).find((choice) => choice.does === does)?.cost ?? 0;
  for (const does of ['fit-plug', 'wider-hole']) {
    const costs = [0, 2000, 7500, 20_000].map((hour) => costOf(hour, does));
    expect(costs).toEqual([...costs].sort((one, other) => one - other));
  }
});

test('a hole wide enough asks nothing', () => {
  expect(choices({ bore: { mm: 40, how: 'taped' } })).toEqual([]);
});
