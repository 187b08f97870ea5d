import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import type { LineEntry, ShoppingEntry } from '../../plan-shape.ts';
import { told } from '../told.test-helper.ts';
import { shoppingRules } from './index.ts';

const line = (own: Partial<LineEntry> = {}): LineEntry => ({
  id: 'line',
  kind: 'ethernet',
  from: 'display.net',
  to: 'gnss.net',
  places: ['locker', 'helm'],
  ways: ['locker-helm'],
  lengthM: 2,
  longestM: 2.4,
  guessed: false,
  ...own,
});
const inPieces = (piecesM: number[], own: Partial<LineEntry> = {}): LineEntry =>
  line({ pieces: piecesM.map((lengthM) => ({ lengthM, made: false })), ...own });

test('joints in the wet are counted and told by the ends of the ways they fall in', () => {
  const { boat } = aBoat().change((draft) => {
    for (const way of draft.ways) way.exposure = 'bilge';
  });
  const said = (...lines: LineEntry[]) => told(shoppingRules, 'shopping/joint-in-the-wet', { boat, plan: { lines } });
  expect(said(inPieces([1.2, 1.2]))).toEqual([
    'fault display gnss locker-helm: The ethernet from Helm display to GNSS on the stern rail is made of 2 pieces, and in whatever order they are laid a joint falls in the wet, between electrical locker and helm dash. [ / ] Buy it in one piece, or in pieces whose joint falls in a dry place; a joint there belongs in a box made for it.',
  ]);
  const both = { ways: ['locker-helm', 'locker-mast'], lengthM: 4.9, longestM: 5.1 };
  expect(said(inPieces([2, 2, 2], { ...both, kind: 'trunk', from: 'nav/helm', to: 'nav/mast-base' }))).toEqual([
    'fault locker-helm locker-mast nav: A stretch of trunk of Navigation bus is made of 3 pieces, and in whatever order they are laid 2 joints fall in the wet, between electrical locker and helm dash and mast base. [ / ] Buy it in one piece, or in pieces whose joint falls in a dry place; a joint there belongs in a box made for it.',
  ]);
  expect(said(inPieces([1.2, 1.2], { kept: ['old'] }))).toEqual([]);
});

const drop = line({
  id: 'drop:display.bus~nav',
  kind: 'drop',
  from: 'display.bus',
  to: 'nav',
  lengthM: 2.5,
  longestM: 2.9,
});

test('pieces too short are told by line, with what is aboard at the shortest it could be', () => {
  const said = (pieces: { mm: number; cable?: string }[], own: Partial<LineEntry> = {}) => {
    const pins: Boat['pins'] = { pieces: { [drop.id]: { pieces, state: 'bought' } } };
    const cables: Boat['cables'] = [
      {
        id: 'old',
        kind: 'ethernet',
        from: { place: 'locker' },
        to: { place: 'helm' },
        ways: ['locker-helm'],
        length: { valueM: 3, how: 'taped', lessM: 0.4, moreM: 0.1 },
        diameterMm: 6,
        condition: 'good',
        fate: 'stays',
      },
    ];
    return told(shoppingRules, 'shopping/pieces-too-short', {
      boat: aBoat().with({ pins, cables }).boat,
      plan: { lines: [{ ...drop, ...own }] },
    });
  };
  expect(said([{ mm: 2500 }])).toEqual([
    'doubt drop:display.bus~nav: The drop from Helm display to Navigation bus is to be made of pieces of 2.50 m in all. It is 2.50 m by the lengths as entered, and up to 2.90 m with their doubt. They may not reach. [2.5 m / ] Tape the route before anything is ordered or cut; if it is no shorter, take the next longer piece.',
  ]);
  expect(said([{ mm: 2499 }], { label: 'W12' })).toEqual([
    'fault drop:display.bus~nav: The drop from Helm display to Navigation bus, W12, is to be made of pieces of 2.50 m in all. It is 2.50 m by the lengths as entered, and up to 2.90 m with their doubt. They do not reach. [2.499 m / ] Order 2.90 m or more, or lead the line a shorter way.',
  ]);
  expect(said([{ mm: 2600 }], { kind: 'trunk', from: 'nav/helm', to: 'nav/locker' })).toEqual([
    'doubt drop:display.bus~nav: A stretch of trunk of Navigation bus is to be made of pieces of 2.60 m in all. It is 2.50 m by the lengths as entered, and up to 2.90 m with their doubt. They may not reach. [2.6 m / ] Tape the route before anything is ordered or cut; if it is no shorter, take the next longer piece.',
  ]);
  expect(said([{ mm: 2900 }])).toEqual([]);
  // 3 m of cable aboard that may be 2.6 m, of which no more counts than is taken of it
  expect(said([{ mm: 3000, cable: 'old' }])).toEqual([expect.stringContaining('pieces of 2.60 m in all')]);
  expect(said([{ mm: 1000, cable: 'old' }, { mm: 1700 }])).toEqual([
    expect.stringContaining('pieces of 2.70 m in all'),
  ]);
  expect(said([{ mm: 2800, cable: 'nothing' }])).toEqual([expect.stringContaining('pieces of 2.80 m in all')]);
});

const item = (own: Partial<ShoppingEntry> = {}): ShoppingEntry => ({
  id: 'wire',
  item: 'wire',
  kind: 'bus-part',
  count: 7,
  by: 'piece',
  for: ['nav'],
  why: 'x',
  sure: true,
  ...own,
});

test('too few are told in pieces or in metres', () => {
  const said = (count: number, own: Partial<ShoppingEntry> = {}, state: 'ordered' | 'returned' = 'ordered') =>
    told(shoppingRules, 'shopping/ordered-too-few', {
      plan: { shopping: [item({ order: { item: 'wire', state, count }, ...own })] },
    });
  expect([...said(1), ...said(5), ...said(1, { by: 'metre' }), ...said(5, { by: 'metre' })]).toEqual([
    'doubt wire: Of wire, 1 is at hand or ordered; the plan needs 7. [1 pieces / ] Order 6 more.',
    'doubt wire: Of wire, 5 are at hand or ordered; the plan needs 7. [5 pieces / ] Order 2 more.',
    'doubt wire: Of wire, 1 m are at hand or ordered; the plan needs 7 m. [1 m / ] Order 6 m more.',
    'doubt wire: Of wire, 5 m are at hand or ordered; the plan needs 7 m. [5 m / ] Order 2 m more.',
  ]);
  expect(said(5, {}, 'returned')).toEqual([]);
});

test('what is ordered for nothing is told with what can still be done', () => {
  const orders: Boat['orders'] = (['ordered', 'arrived'] as const).map((state, n) => ({ item: `part-${n}`, state }));
  expect(
    told(shoppingRules, 'shopping/ordered-for-nothing', {
      boat: aBoat().with({ orders }).boat,
      plan: { shopping: [] },
    }),
  ).toEqual([
    'doubt part-0: Part-0 is ordered, and nothing in the plan needs it. [ / ] Take it off the order, or say what it is bought for by fixing the pieces of its line.',
    'doubt part-1: Part-1 has arrived, and nothing in the plan needs it. [ / ] Send it back, or keep it as a spare and mark it as at hand.',
  ]);
});
