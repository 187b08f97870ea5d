import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { type BoatIndex, indexBoat } from '../boat/boat-index.ts';
import type { Cable, Way } from '../boat/boat-schema.ts';
import type { LineEntry } from '../plan-shape.ts';
import { makeRouter } from './routes.ts';
import { routerWith, shareWays } from './share-ways.ts';
import { wayFills } from './way-fills.ts';

const taped = (valueM: number): Way['length'] => ({ valueM, how: 'taped' });

/** The small boat with a pipe of this bore from the locker to the helm, and round it the open ways by the mast. */
const indexWith = (boreMm: number, more: { cables?: Cable[]; ways?: Way[] } = {}): BoatIndex =>
  indexBoat(
    aBoat()
      .with({ cables: more.cables ?? [] })
      .change((boat) => {
        for (const way of boat.ways) if (way.id === 'locker-helm') way.bore = { mm: boreMm, how: 'taped' };
      })
      .add({ ways: more.ways ?? [] }).boat,
  );

const feeds = (index: BoatIndex, count: number): LineEntry[] =>
  Array.from({ length: count }, (_, n): LineEntry => {
    const route = makeRouter(index).cheapest({ kind: 'feed', from: 'locker', to: 'helm' });
    return {
      id: `feed:unit-${n}.supply~main-panel`,
      kind: 'feed',
      from: `unit-${n}.supply`,
      to: 'main-panel',
      places: ['locker', 'helm'],
      ways: [...(route?.ways ?? [])],
      lengthM: 3,
      longestM: 3.1,
      guessed: false,
    };
  });

const fillsOf = (index: BoatIndex, lines: readonly LineEntry[]) => {
  const agreed = shareWays({ index, lines, buses: [] });
  const led = lines.map((line) => ({ ...line, ways: [...(agreed.get(line.id) ?? line.ways)] }));
  return { led, fills: wayFills({ index, lines: led, buses: [] }) };
};

test('three feeds of 8 mm in a 25 mm pipe fill it to 31 %: nobody moves', () => {
  const index = indexWith(25);
  expect(shareWays({ index, lines: feeds(index, 3), buses: [] }).size).toBe(0);
});

test('of six feeds in a 25 mm pipe, 61 %, three go round by the mast and no more than that', () => {
  const index = indexWith(25);
  const { led, fills } = fillsOf(index, feeds(index, 6));
  expect(led.filter(({ ways }) => ways.includes('locker-helm'))).toHaveLength(3);
  expect(fills.find(({ id }) => id === 'locker-helm')).toMatchObject({ verdict: 'advice', reasons: ['jam'] });
});

test('where there is no other way all stay, and the pipe is refused', () => {
  const index = indexBoat(
    aBoat().change((boat) => {
      boat.ways = boat.ways.filter(({ id }) => id !== 'helm-mast');
      for (const way of boat.ways) if (way.id === 'locker-helm') way.bore = { mm: 25, how: 'taped' };
    }).boat,
  );
  const { fills } = fillsOf(index, feeds(index, 6));
  expect(fills.find(({ id }) => id === 'locker-helm')).toMatchObject({ verdict: 'refused', fitsAtMm: 32 });
});

test('of two pipes too small for all, both are used and neither overfilled', () => {
  const twin: Way = {
    id: 'twin',
    ends: ['locker', 'helm'],
    length: taped(2.3),
    kind: 'conduit',
    known: 'seen',
    bore: { mm: 20, how: 'taped' },
  };
  const index = indexWith(25, { ways: [twin] });
  const { fills } = fillsOf(index, feeds(index, 5));
  expect(fills.filter(({ id }) => id === 'locker-helm' || id === 'twin').map(({ verdict }) => verdict)).not.toContain(
    'refused',
  );
});

test('a line that agreed on a way is led by it with the true length of that way', () => {
  const index = indexWith(25);
  const router = routerWith(makeRouter(index), new Map([['feed:a.b~c', ['locker-mast', 'helm-mast']]]));
  expect(router.cheapest({ kind: 'feed', from: 'locker', to: 'helm', line: 'feed:a.b~c' })?.mm).toBe(4600);
  expect(router.cheapest({ kind: 'feed', from: 'locker', to: 'helm', line: 'feed:other~c' })?.mm).toBe(2200);
});

test('agreeing never puts more into the pipes above 60 % than each alone would, in whatever order lines stand', () => {
  const wayOf = (n: number, [lengthM, boreMm]: readonly [number, number]): Way => ({
    id: `more-${n}`,
    ends: ['locker', 'helm'],
    length: taped(lengthM),
    kind: 'conduit',
    known: 'seen',
    bore: { mm: boreMm, how: 'taped' },
  });
  const pipe = fc.tuple(
    fc.integer({ min: 20, max: 60 }).map((dm) => dm / 10),
    fc.integer({ min: 10, max: 40 }),
  );
  fc.assert(
    fc.property(fc.array(pipe, { maxLength: 3 }), fc.integer({ min: 1, max: 9 }), (pipes, count) => {
      const index = indexWith(25, { ways: pipes.map((entry, n) => wayOf(n, entry)) });
      const lines = feeds(index, count);
      const over = (fills: readonly { fillPct: number; lines: readonly string[] }[]): number =>
        fills.reduce((sum, { fillPct, lines: { length } }) => sum + (length > 0 ? Math.max(0, fillPct - 60) : 0), 0);
      const { fills } = fillsOf(index, lines);
      expect(over(fills)).toBeLessThanOrEqual(over(wayFills({ index, lines, buses: [] })) + 1e-6);
      expect(fillsOf(index, [...lines].reverse()).fills).toEqual(fills);
    }),
    { numRuns: 60 },
  );
});
