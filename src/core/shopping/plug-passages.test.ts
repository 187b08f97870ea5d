import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import type { Boat, Way } from '../boat/boat-schema.ts';
import { plan } from '../plan.ts';
import type { Plan } from '../plan-shape.ts';
import { aCoaxBoat, type HoleAsk, holeBoat, holeLine } from './hole-boat.test-helper.ts';

const planned = (boat: Boat): Plan => plan(boat, new Map());
const passagesOf = (ask: HoleAsk = {}) => planned(holeBoat(ask)).passages;
const firstChoices = (ask: HoleAsk = {}) => passagesOf(ask)[0]?.choices ?? [];
const does = (ask: HoleAsk = {}): string[] => firstChoices(ask).map((choice) => choice.does);
const costOf = (ask: HoleAsk, what: string): number | undefined =>
  firstChoices(ask).find((choice) => choice.does === what)?.cost;

test('a plug of 16 mm before a hole of 15 mm: 3.00 and 0.3 h at 75.00 for a plug fitted behind, 1 h for a wider hole', () => {
  expect(passagesOf()).toEqual([
    {
      way: 'hole',
      line: holeLine,
      takes: 'fit-plug',
      choices: [
        { does: 'fit-plug', cost: 300 + 2250 },
        { does: 'wider-hole', cost: 7500, wideMm: 16 },
      ],
    },
  ]);
});

test('the plug that is fitted behind the hole is on the shopping list, with the reason', () => {
  const plugs = (ask: HoleAsk) =>
    planned(holeBoat(ask)).shopping.filter(({ kind, for: lines }) => kind === 'plug' && lines.includes(holeLine));
  expect(plugs({})).toMatchObject([{ id: 'plug-rj45-male', count: 1 }]);
  expect(plugs({})[0]?.why).toContain('does not pass a hole');
  expect(plugs({ hole: { bore: { mm: 40, how: 'taped' } } })).toEqual([]);
});

test('a way round that costs less is the one the plan takes, and the plan says what else could have been done', () => {
  const { lines, passages, ways } = planned(holeBoat({ roundM: 2.5 }));
  expect(lines.find(({ id }) => id === holeLine)?.ways).toEqual(['round']);
  expect(ways.find(({ id }) => id === 'hole')?.lines).toEqual([]);
  // The next length on the shelf is 5 m at 9.00 in place of 2 m at 5.00.
  expect(passages).toMatchObject([
    {
      way: 'hole',
      takes: 'other-way',
      choices: [
        { does: 'other-way', cost: 400, ways: ['round'] },
        { does: 'fit-plug', cost: 2550 },
        { does: 'wider-hole', cost: 7500 },
      ],
    },
  ]);
});

test('a long way round comes last, and so does one with hours of work', () => {
  expect(does({ roundM: 90 })).toEqual(['fit-plug', 'wider-hole', 'other-way']);
  expect(costOf({ roundM: 2.5, roundHours: 2 }, 'other-way')).toBe(400 + 15_000);
});

test('a way round through another hole that is too small is none', () => {
  const round: Partial<Way> = { kind: 'gland', bore: { mm: 12, how: 'taped' } };
  expect(does({ roundM: 2.5, round })).toEqual(['fit-plug', 'wider-hole']);
});

test('a route that is fixed by you stays, though another way would cost less; in a pipe it has passed already nothing is asked', () => {
  const pinned = (state: 'fixed' | 'bought' | 'fitted') => passagesOf({ roundM: 2.5, state });
  expect(pinned('fixed')[0]?.takes).toBe('fit-plug');
  expect(pinned('fixed')[0]?.choices.map((choice) => choice.does)).toContain('other-way');
  expect(pinned('bought')[0]?.takes).toBe('fit-plug');
  expect(pinned('fitted')).toEqual([]);
});

test('a rated bulkhead is not drilled, and a pipe not widened', () => {
  for (const hole of [{ through: 'fire' }, { through: 'watertight' }, { kind: 'conduit' }] as const) {
    expect(does({ hole })).toEqual(['fit-plug']);
  }
});

test('a fixed lead is cut only where its sheet says that it may be', () => {
  expect(does({ lead: {} })).toEqual(['wider-hole']);
  expect(does({ lead: { mayCut: false } })).toEqual(['wider-hole']);
  expect(does({ lead: { mayCut: true } })).toEqual(['fit-plug', 'wider-hole']);
});

test('a maker’s own plug is not cut off', () => {
  expect(does({ connector: 'maker-a-video' })).toEqual(['wider-hole']);
});

test('where nothing can be done the plan takes nothing', () => {
  const [passage] = passagesOf({ connector: 'maker-a-video', hole: { through: 'fire' } });
  expect(passage).toMatchObject({ choices: [] });
  expect(passage).not.toHaveProperty('takes');
});

test('cable by the metre is drawn before it has a plug, and costs nothing more', () => {
  expect(firstChoices({ shelf: {} })[0]).toEqual({ does: 'fit-plug', cost: 0 });
});

test('a hole serves all lines through it: three plugs at 25.50 are dearer than one hole at 75.00', () => {
  const takes = (cables: number) => new Set(passagesOf({ cables }).map((passage) => passage.takes));
  expect(takes(2)).toEqual(new Set(['fit-plug']));
  expect(takes(3)).toEqual(new Set(['wider-hole']));
});

test('a drop may be led another way by you, within the limits of its bus; the plan leaves it where its layout has it', () => {
  const boat = (roundM: number) =>
    aBoat().change((draft) => {
      for (const way of draft.ways) {
        if (way.id === 'locker-stern') Object.assign(way, { kind: 'gland', bore: { mm: 12, how: 'taped' } });
      }
      draft.ways.push({
        id: 'stern-round',
        ends: ['locker', 'stern-rail'],
        length: { valueM: roundM, how: 'taped' },
        kind: 'open',
        known: 'seen',
      });
    }).boat;
  const [passage] = planned(boat(4.9)).passages;
  // The antenna has a fixed lead of half a metre, and its sheet does not say that it may be cut.
  expect(passage).toMatchObject({ line: 'drop:gnss.bus~nav', takes: 'wider-hole' });
  const round = passage?.choices.find((choice) => choice.does === 'other-way');
  expect(round?.ways).toEqual(['stern-round']);
  // Once it is settled that way nothing is left to ask; a way of 9 m would break the limit for one drop.
  const pins: Boat['pins'] = { routes: { 'drop:gnss.bus~nav': { ways: ['stern-round'], state: 'fixed' } } };
  expect(planned({ ...boat(4.9), pins }).passages).toEqual([]);
  expect(planned(boat(9)).passages[0]?.choices.map((choice) => choice.does)).not.toContain('other-way');
});

test('lines without a moulded plug ask nothing', () => {
  expect(planned(aCoaxBoat()).passages).toEqual([]);
});

test('whatever hours cost and however long the way round is, the plan takes none that costs more than another', () => {
  const ask = fc.record({
    hour: fc.constantFrom(0, 500, 2000, 7500, 20_000),
    roundM: fc.option(fc.constantFrom(0.9, 2.5, 6, 40), { nil: undefined }),
    cables: fc.constantFrom(1, 2),
  });
  fc.assert(
    fc.property(ask, ({ hour, roundM, cables }) => {
      const { passages, lines } = planned(holeBoat({ hour, cables, ...(roundM === undefined ? {} : { roundM }) }));
      const spent = passages.reduce(
        (sum, { choices, takes }) => sum + (takes === 'wider-hole' ? 0 : (choices[0]?.cost ?? 0)),
        0,
      );
      const holes = passages.some(({ takes }) => takes === 'wider-hole') ? hour : 0;
      const all = (what: string): number =>
        passages.every(({ choices }) => choices.some((choice) => choice.does === what))
          ? passages.reduce((sum, { choices }) => sum + (choices.find((choice) => choice.does === what)?.cost ?? 0), 0)
          : Number.POSITIVE_INFINITY;
      expect(spent + holes).toBeLessThanOrEqual(Math.min(all('fit-plug'), all('other-way'), hour));
      for (const { line, takes } of passages) {
        const goes = lines.find(({ id }) => id === line)?.ways.includes('hole');
        expect(goes).toBe(takes !== 'other-way');
      }
    }),
    { numRuns: 25 },
  );
});
