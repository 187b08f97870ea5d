import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { indexBoat } from '../boat/boat-index.ts';
import type { Cable } from '../boat/boat-schema.ts';
import type { LineEntry, WayEntry } from '../plan-shape.ts';
import { wayFills } from './way-fills.ts';

const cable = (own: Partial<Cable> = {}): Cable => ({
  id: 'old-coax',
  kind: 'coax',
  from: { place: 'locker' },
  to: { place: 'stern-rail' },
  ways: ['locker-stern'],
  length: { valueM: 5, how: 'taped' },
  diameterMm: 10.3,
  condition: 'good',
  fate: 'stays',
  ...own,
});

const line = (own: Partial<LineEntry> = {}): LineEntry => ({
  id: 'coax:ais.antenna~whip.antenna',
  kind: 'coax',
  from: 'ais.antenna',
  to: 'whip.antenna',
  places: ['locker', 'stern-rail'],
  ways: ['locker-stern'],
  lengthM: 16,
  longestM: 17,
  guessed: false,
  ...own,
});

const sternOf = (cables: readonly Cable[], lines: readonly LineEntry[]): WayEntry | undefined => {
  const { boat } = aBoat().with({ cables: [...cables] });
  return wayFills({ index: indexBoat(boat), lines, buses: [{ id: 'nav', grade: 'light' }] }).find(
    ({ id }) => id === 'locker-stern',
  );
};

test('PW-75: one 10.3 mm coax that stays and a new one fill a 25 mm pipe to 33.9 %: advice, two cables', () => {
  const found = sternOf([cable()], [line()]);
  expect(found?.fillPct).toBeCloseTo(33.9, 1);
  expect(found).toMatchObject({
    boreMm: 25,
    kept: ['old-coax'],
    lines: ['coax:ais.antenna~whip.antenna'],
    sharePct: 31,
    largestMm: 10.3,
    verdict: 'advice',
    reasons: ['two-cables'],
  });
});

test('a coax up to 15 m is taken to be 6.1 mm thick, a longer one 10.3 mm (OSR guidance, second-hand)', () => {
  expect(sternOf([], [line({ longestM: 15 })])?.largestMm).toBe(6.1);
  expect(sternOf([], [line({ longestM: 15.1 })])?.largestMm).toBe(10.3);
});

test('a cable that goes makes room, and a line that runs on a cable aboard counts once', () => {
  const found = sternOf([cable({ fate: 'goes' }), cable({ id: 'kept' })], [line({ kept: ['kept'] })]);
  expect(found).toMatchObject({ kept: ['kept'], lines: [], verdict: 'fits' });
  expect(found?.largestMm).toBeUndefined();
});

test('PW-87: a moulded 16 mm plug beside cables of 8 and 7 mm in 25 mm is a doubt, and 32 mm would take it', () => {
  const drop = line({ id: 'drop:gnss.bus~nav', kind: 'drop', from: 'gnss.bus', to: 'nav' });
  const found = sternOf([cable({ diameterMm: 8 }), cable({ id: 'other', diameterMm: 7 })], [drop]);
  expect(found).toMatchObject({ largestMm: 16, verdict: 'doubt', reasons: ['plug'], fitsAtMm: 32 });
});

test('a trunk that lies in the way and stays is not counted a second time as the trunk of the plan', () => {
  const trunk = line({ id: 'trunk:nav/a~nav/b', kind: 'trunk', from: 'nav/a', to: 'nav/b' });
  const held = cable({ id: 'old-trunk', kind: 'trunk', serves: 'nav', diameterMm: 7 });
  expect(sternOf([held], [trunk])).toMatchObject({ kept: ['old-trunk'], lines: [] });
  expect(sternOf([held], [{ ...trunk, ways: ['locker-stern', 'locker-stern'] }])?.lines).toEqual([trunk.id]);
  const back = { ...trunk, id: 'trunk:nav/b~nav/end' };
  expect(sternOf([held], [{ ...trunk, kept: ['old-trunk'] }, back])?.lines).toEqual([back.id]);
});

test('a way without a bore has no fill', () => {
  const { boat } = aBoat();
  const ways = wayFills({ index: indexBoat(boat), lines: [], buses: [] }).map(({ id }) => id);
  expect(ways).toEqual(['locker-helm', 'locker-stern']);
});

test('in the bore that is said to fit, it fits', () => {
  const diameter = fc.integer({ min: 40, max: 160 }).map((tenths) => tenths / 10);
  fc.assert(
    fc.property(fc.array(diameter, { maxLength: 5 }), fc.integer({ min: 0, max: 6 }), (keptMm, count) => {
      const kept = keptMm.map((diameterMm, n) => cable({ id: `kept-${n}`, diameterMm }));
      const lines = Array.from({ length: count }, (_, n) => line({ id: `ethernet:a.x~b.y${n}`, kind: 'ethernet' }));
      const fitsAtMm = sternOf(kept, lines)?.fitsAtMm;
      if (fitsAtMm === undefined) return;
      const { boat } = aBoat()
        .with({ cables: kept })
        .change((draft) => {
          for (const way of draft.ways) if (way.id === 'locker-stern') way.bore = { mm: fitsAtMm, how: 'taped' };
        });
      const wider = wayFills({ index: indexBoat(boat), lines, buses: [] }).find(({ id }) => id === 'locker-stern');
      expect(['fits', 'advice']).toContain(wider?.verdict);
    }),
    { numRuns: 100 },
  );
});
