import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { anOpening } from '../boat/an-opening.test-helper.ts';
import { indexBoat } from '../boat/boat-index.ts';
import type { Opening } from '../boat/opening.ts';
import { planOpenings } from '../fitting/openings/plan-openings.ts';
import { priceList } from '../prices/price-list.ts';
import { plateWants } from './plate-wants.ts';
import { mergeWants } from './want.ts';

const hole = anOpening({
  hole: { shape: 'rectangle', widthMm: 240, heightMm: 205 },
  panel: { material: 'plywood', thicknessMm: 15 },
  plate: { id: 'radar-plate', overlapMm: 25 },
});

const bought = (openings: Opening[]) => {
  const { boat } = aBoat().with({ openings });
  const index = indexBoat(boat);
  const { plates } = planOpenings({ index, lines: [], buses: [] });
  return mergeWants(plateWants({ index, prices: priceList(boat), buses: new Map(), feeds: new Map() }, plates));
};

test('a plate is one item, with its screws and what it is bedded on', () => {
  expect(bought([hole])).toMatchObject([
    { id: 'butyl-tape', count: 2, by: 'metre' },
    {
      id: 'made-radar-plate',
      item: 'plate 290 mm × 255 mm, plywood 12 mm, cut to its template',
      count: 1,
      for: ['helm'],
      sure: true,
    },
    { id: 'plate-screw', count: 10 },
  ]);
});

test('a hole that was only guessed could change its plate', () => {
  expect(bought([{ ...hole, how: 'guessed' }])[1]).toMatchObject({ id: 'made-radar-plate', sure: false });
  expect(bought([])).toEqual([]);
});
