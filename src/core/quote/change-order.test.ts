import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { plan } from '../plan.ts';
import { type ChangeOrder, changeOrder, type Planned } from './change-order.ts';
import { quoteOf } from './quote-of.ts';
import type { Range } from './quote-shape.ts';

const tern = aBoat().boat;
const state = (boat: Boat): Planned => ({ boat, plan: plan(boat, new Map()) });
const longer: Boat = {
  ...tern,
  ways: tern.ways.map((way) => ({ ...way, length: { ...way.length, valueM: way.length.valueM + 3 } })),
};
const fewer: Boat = aBoat().unit('radio', { fate: 'goes' }).boat;
const states = [tern, longer, fewer, { ...longer, quote: { contingencyPct: 5, by: 'owner' as const } }].map(state);

const back = ({ least, most }: Range): Range => ({ least: 0 - least, most: 0 - most });

/** What the order the other way round must say, number by number. */
const turned = ({ items, hours, sums }: ChangeOrder) => ({
  items: items.map(({ id, more, cost }) => [id, 0 - more, 0 - cost]),
  hours: hours.map(({ task, more, hoursH, cost }) => [task, 0 - more, back(hoursH), back(cost)]),
  sums: [0 - sums.parts, back(sums.labour), back(sums.contingency), back(sums.total), back(sums.hoursH)],
});
const plain = ({ items, hours, sums }: ChangeOrder) => ({
  items: items.map(({ id, more, cost }) => [id, more + 0, cost + 0]),
  hours: hours.map(({ task, more, hoursH, cost }) => [task, more + 0, hoursH, cost]),
  sums: [sums.parts + 0, sums.labour, sums.contingency, sums.total, sums.hoursH],
});
const pairs = fc.tuple(fc.constantFrom(...states), fc.constantFrom(...states));

describe('a change order', () => {
  test('of a boat and herself is empty', () => {
    for (const own of states) {
      const order = changeOrder({ before: own, after: own });
      expect([order.units.now, order.units.nowNot, order.lines, order.items, order.hours]).toEqual([
        [],
        [],
        [],
        [],
        [],
      ]);
      expect([order.gained, order.lost, order.sums.total]).toEqual([[], [], { least: 0, most: 0 }]);
    }
  });

  test('there and back again cancels, and its price is the difference of two quotes to the hundredth', () => {
    fc.assert(
      fc.property(pairs, ([before, after]) => {
        const there = changeOrder({ before, after });
        const home = changeOrder({ before: after, after: before });
        expect(plain(home)).toEqual(turned(there));
        expect(home.units).toEqual({ now: there.units.nowNot, nowNot: there.units.now });
        expect([home.gained.length, home.lost.length]).toEqual([there.lost.length, there.gained.length]);
        const [old, now] = [quoteOf(before).sums.total, quoteOf(after).sums.total];
        expect(there.sums.total).toEqual({ least: now.least - old.least, most: now.most - old.most });
        expect(there.items.reduce((sum, { cost }) => sum + cost, 0)).toBe(there.sums.parts);
        for (const end of ['least', 'most'] as const)
          expect(there.hours.reduce((sum, { cost }) => sum + cost[end], 0)).toBe(there.sums.labour[end]);
      }),
      { numRuns: 16 },
    );
  });

  test('names the unit that goes, the lines that grow and the items bought more of', () => {
    const [old, grown, less] = states;
    if (old === undefined || grown === undefined || less === undefined) throw new Error('no states');
    expect(changeOrder({ before: old, after: less }).units.now.map(({ id }) => id)).toContain('radio');
    const order = changeOrder({ before: old, after: grown });
    expect(order.lines.some(({ beforeM = 0, afterM = 0 }) => afterM > beforeM && beforeM > 0)).toBe(true);
    expect(order.sums.parts).toBeGreaterThan(0);
  });
});
