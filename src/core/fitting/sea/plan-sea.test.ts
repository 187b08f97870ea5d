import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { leadLine } from './lead-line.ts';
import { planSea } from './plan-sea.ts';

const on = '2027-06-01';

test('a lead line beside the transducer says how deep it lies, and both offsets (TD-01 the other way round)', () => {
  const found = leadLine({ leadM: 4.6, shownM: 4, offsetM: 0, draftM: 1.95 });
  expect(found.belowWaterM).toBeCloseTo(0.6, 9);
  expect(found.surfaceM).toBeCloseTo(0.6, 9);
  expect(found.keelM).toBeCloseTo(-1.35, 9);
  expect(leadLine({ leadM: 4.6, shownM: 2.65, offsetM: -1.35, draftM: 1.95 }).belowWaterM).toBeCloseTo(0.6, 9);
});

test('a swing gives its deviations round north, a curve and a card where there is enough, else neither', () => {
  const points = [0, 45, 90, 135, 180, 225, 270, 315].map((magneticDeg) => ({
    magneticDeg,
    compassDeg: (magneticDeg + 358) % 360,
  }));
  const swing = (id: string, few: number) => ({
    id,
    on,
    unit: 'compass',
    electronics: 'on' as const,
    points: points.slice(0, few),
  });
  const { swings } = planSea(aBoat().with({ sea: { swings: [swing('b', 3), swing('a', 8)] } }).boat, 12);
  expect(swings.map(({ id, card }) => [id, card.length])).toEqual([
    ['a', 24],
    ['b', 0],
  ]);
  expect(swings[0]?.curve?.a).toBeCloseTo(2, 9);
  expect(swings[1]?.points).toEqual([0, 45, 90].map((headingDeg) => ({ headingDeg, deviationDeg: 2 })));
});

test('a bridge without the level of its chart has no highest tide; the air draft at its most counts', () => {
  const bridges = [
    { id: 'a', on, name: 'road bridge', chartedM: 17, datum: 'hat' as const, datumAboveM: 5.6 },
    { id: 'b', on, name: 'railway bridge', chartedM: 17 },
  ];
  const [road, rail] = planSea(aBoat().with({ sea: { bridges } }).boat, 16.4).bridges;
  expect(road?.highestTideM).toBeCloseTo(5.2, 9);
  expect(rail).toEqual({ id: 'b', on, name: 'railway bridge' });
});
