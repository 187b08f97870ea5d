import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aBoat, type BoatBuilder } from '../boat/a-boat.test-helper.ts';
import { indexBoat } from '../boat/boat-index.ts';
import type { Cable } from '../boat/boat-schema.ts';
import type { StandingJoin } from '../plan-shape.ts';
import { type JoinLines, joinLines } from './join-lines.ts';
import { withPinnedRoutes } from './pinned-routes.ts';
import { makeRouter } from './routes.ts';

const linesOf = (builder: BoatBuilder = aBoat()): JoinLines => {
  const index = indexBoat(builder.boat);
  const router = withPinnedRoutes(makeRouter(index), index.boat);
  const joins = builder.boat.joins.map(({ id, kind, members }): StandingJoin => ({ id, kind, members, from: 'file' }));
  return joinLines({ index, router, joins });
};

const radioLine = 'pair:converter.wires~radio.wires';

const cable = (own: Partial<Cable> = {}): Cable => ({
  id: 'old-pair',
  kind: 'pair',
  from: { place: 'helm' },
  to: { place: 'locker' },
  serves: 'radio-position',
  ways: ['helm-mast', 'locker-mast'],
  length: { valueM: 5.2, how: 'guessed', lessM: 0.5, moreM: 1 },
  diameterMm: 6,
  condition: 'good',
  fate: 'stays',
  ...own,
});

test('the pair from the converter to the old radio: 2.2 m of conduit and a tail of 0.4 m and one of 0.5 m', () => {
  const { lines, linesOf: byJoin, gaps } = linesOf();
  expect(lines).toEqual([
    {
      id: radioLine,
      kind: 'pair',
      from: 'converter.wires',
      to: 'radio.wires',
      places: ['locker', 'helm'],
      ways: ['locker-helm'],
      lengthM: 3.1,
      longestM: 3.4,
      guessed: false,
    },
  ]);
  expect(byJoin.get('radio-position')).toEqual([radioLine]);
  expect(byJoin.get('nav-join')).toEqual([]);
  expect(gaps).toEqual([]);
});

test('a settled route is taken though a shorter one is there, whichever way round it was entered', () => {
  for (const ways of [
    ['locker-mast', 'helm-mast'],
    ['helm-mast', 'locker-mast'],
  ]) {
    const { lines } = linesOf(aBoat().with({ pins: { routes: { [radioLine]: { ways, state: 'bought' } } } }));
    expect(lines[0]).toMatchObject({ ways: ['locker-mast', 'helm-mast'], pinned: 'bought' });
  }
  const half = linesOf(aBoat().with({ pins: { routes: { [radioLine]: { ways: ['locker-mast'], state: 'fixed' } } } }));
  expect(half.lines[0]?.ways).toEqual(['locker-helm']);
  expect(half.lines[0]).not.toHaveProperty('pinned');
});

test('a kept pair that serves the join is used as it lies, with its own ways and length', () => {
  const { lines } = linesOf(aBoat().with({ cables: [cable()] }));
  expect(lines).toEqual([
    expect.objectContaining({
      id: radioLine,
      places: ['locker', 'mast-base', 'helm'],
      ways: ['locker-mast', 'helm-mast'],
      lengthM: 5.2,
      longestM: 6.2,
      guessed: true,
      kept: ['old-pair'],
    }),
  ]);
});

test('two kept cables that lie end to end make one line', () => {
  const upper = cable({
    id: 'upper',
    to: { place: 'mast-base' },
    ways: ['helm-mast'],
    length: { valueM: 2, how: 'taped', lessM: 0, moreM: 0.1 },
  });
  const lower = cable({
    id: 'lower',
    from: { place: 'locker' },
    to: { place: 'mast-base' },
    ways: ['locker-mast'],
    length: { valueM: 3, how: 'taped', lessM: 0, moreM: 0.1 },
  });
  const { lines } = linesOf(aBoat().with({ cables: [upper, lower] }));
  expect(lines[0]).toMatchObject({
    kept: ['lower', 'upper'],
    lengthM: 5,
    longestM: 5.2,
    ways: ['locker-mast', 'helm-mast'],
  });
});

test('a cable that goes, is of another kind or serves something else is no line', () => {
  const others = [cable({ fate: 'goes' }), cable({ id: 'b', kind: 'coax' }), cable({ id: 'c', serves: 'other' })];
  expect(linesOf(aBoat().with({ cables: others })).lines[0]?.kept).toBeUndefined();
});

test('with two listeners there is one line from the talker to each, and a kept one needs its plug named', () => {
  const two = aBoat()
    .add({
      kit: [{ id: 'second-radio', name: 'Radio below', sheet: 'fixed-radio', fate: 'comes', place: 'mast-base' }],
    })
    .change((boat) => {
      boat.joins[1]?.members.push({ kit: 'second-radio', port: 'gps-in', as: 'listen' });
    });
  expect(linesOf(two).lines.map(({ id }) => id)).toEqual([radioLine, 'pair:converter.wires~second-radio.wires']);
  const kept = (at?: string) =>
    linesOf(
      two.with({
        cables: [cable(at === undefined ? {} : { from: { place: 'helm', at } })],
      }),
    ).lines.map((line) => line.kept);
  expect(kept()).toEqual([undefined, undefined]);
  expect(kept('radio.wires')).toEqual([['old-pair'], undefined]);
});

test('two joins of one kind between the same plugs share one line', () => {
  const again = aBoat().change((boat) => {
    const [, radio] = boat.joins;
    if (radio !== undefined) boat.joins.push({ ...radio, id: 'radio-again' });
  });
  const { lines, linesOf: byJoin } = linesOf(again);
  expect(lines).toHaveLength(1);
  expect(byJoin.get('radio-again')).toEqual([radioLine]);
});

test('where no way takes the line it is a gap, not a line', () => {
  const noWay = aBoat().change((boat) => {
    for (const way of boat.ways) way.allows = ['trunk', 'drop', 'feed'];
  });
  expect(linesOf(noWay)).toMatchObject({
    lines: [],
    gaps: [{ kind: 'pair', from: 'converter.wires', to: 'radio.wires', serves: ['radio-position'] }],
  });
});

test('a stuck label stays with its line', () => {
  expect(linesOf(aBoat().with({ labels: { [radioLine]: 'C07' } })).lines[0]?.label).toBe('C07');
});

test('the order of members, ways and joins changes nothing', () => {
  const { boat } = aBoat();
  const shuffled = <Entry>(list: readonly Entry[]): fc.Arbitrary<Entry[]> =>
    fc.shuffledSubarray([...list], { minLength: list.length });
  const orders = fc.record({
    ways: shuffled(boat.ways),
    joins: fc
      .tuple(shuffled(boat.joins), shuffled(boat.joins[1]?.members ?? []))
      .map(([joins, members]) => joins.map((join) => (join.id === 'radio-position' ? { ...join, members } : join))),
  });
  fc.assert(
    fc.property(orders, (order) => {
      expect(linesOf(aBoat().with(order)).lines).toEqual(linesOf().lines);
    }),
    { numRuns: 50 },
  );
});
