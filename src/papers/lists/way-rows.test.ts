import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import type { WayEntry } from '../../core/plan-shape.ts';
import { wayRows } from './way-rows.ts';

const way = (over: Partial<WayEntry>): WayEntry => ({
  id: 'locker-helm',
  boreMm: 25,
  kept: [],
  lines: ['pair:a~b'],
  fillPct: 20,
  sharePct: 53,
  leastBoreMm: 12,
  verdict: 'fits',
  reasons: [],
  ...over,
});
const { boat } = aBoat();

test('a pipe says how much of it is taken, by what, and whether all goes in', () => {
  expect(wayRows(boat, { ways: [way({ kept: ['old'] })], passages: [] })).toEqual([
    {
      key: 'locker-helm',
      what: 'electrical locker to helm dash',
      fact: '20.0 % of 25 mm, 1 cable that stays and 1 new: fits',
      fillPct: 20,
      isOver: false,
      lights: ['locker-helm', 'locker', 'helm'],
    },
  ]);
});

test('a pipe that cannot take all names the bore that would, and comes first', () => {
  const rows = wayRows(boat, {
    ways: [way({}), way({ id: 'locker-mast', fillPct: 71.2, verdict: 'refused', fitsAtMm: 31.4 })],
    passages: [],
  });
  expect(rows.map(({ key }) => key)).toEqual(['locker-mast', 'locker-helm']);
  expect(rows[0]?.fact).toContain('does not go in, 32 mm would take all');
  expect(rows[0]?.isOver).toBe(true);
});

test('where only a plug is in the way, it says what the plan counts on', () => {
  const factWith = (takes?: 'fit-plug' | 'wider-hole' | 'other-way'): string | undefined =>
    wayRows(boat, {
      ways: [way({ verdict: 'refused', reasons: ['plug'], fitsAtMm: 32 })],
      passages: [{ way: 'locker-helm', line: 'ethernet:a~b', choices: [], ...(takes === undefined ? {} : { takes }) }],
    })[0]?.fact;
  expect(factWith('fit-plug')).toContain('goes in with a plug fitted behind it');
  expect(factWith('wider-hole')).toContain('is to be widened, 32 mm would take all');
  expect(factWith('other-way')).toContain('does not go in');
  expect(factWith()).toContain('does not go in');
});
