import { expect, test } from 'vitest';
import { indexBoat } from '../../boat/boat-index.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import { joinsOf } from '../../joins/joins-of.ts';
import { beforeOf, withSeenBefore } from '../../readings/before-and-after.ts';
import { refitOf } from '../../readings/refit.ts';
import { arriving, need, type Sketch, wired } from '../../readings/wired.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { lostWithTheRefit } from './lost-with-the-refit.ts';

const sketch = (more: Partial<Sketch> = {}): Sketch => ({
  units: {
    log: { ports: { n2k: { protocol: 'nmea2000', sends: [128275] } } },
    old: { ports: { n2k: { protocol: 'nmea2000', hears: [128275] } }, kit: { fate: 'goes' } },
    fresh: { ports: { n2k: { protocol: 'nmea2000', hears: [129025] } }, kit: { fate: 'comes' } },
  },
  joins: { nav: ['log.n2k', 'old.n2k', 'fresh.n2k'] },
  ...more,
});

const screens = (boat: Boat): Boat => ({
  ...boat,
  sheets: boat.sheets.map((sheet) => (sheet.id === 'sheet-log' ? sheet : { ...sheet, kind: 'display' })),
});

const before = (boat: Boat) => {
  const index = indexBoat(boat);
  return beforeOf(refitOf(index, (phase) => joinsOf(index, phase)));
};

const found = (more?: Partial<Sketch>) => {
  const boat = screens(wired(sketch(more)));
  return findingsOf(lostWithTheRefit, { boat, plan: { before: before(boat) } });
};
const listening = { n2k: { protocol: 'nmea2000', hears: [128275] } } as const;

test('the leaving old display was the only one that showed the log total', () => {
  expect(found()).toMatchObject([
    {
      level: 'doubt',
      about: ['old'],
      says: 'Log distance was shown before on old, and no screen shows it after the refit.',
    },
  ]);
});

test('what a new screen shows again, what somebody has asked for, and what stays are not lost', () => {
  const { units } = sketch();
  expect(found({ units: { ...units, fresh: { ports: listening, kit: { fate: 'comes' } } } })).toEqual([]);
  expect(found({ needs: [need('log-distance', 'fresh')] })).toEqual([]);
  expect(found({ units: { ...units, old: { ports: listening } } })).toEqual([]);
});

test('a unit without a face that still hears it does not count as showing it', () => {
  const { units } = sketch();
  const boat = screens(wired(sketch({ units: { ...units, fresh: { ports: listening, kit: { fate: 'comes' } } } })));
  const boxed = { ...boat, sheets: boat.sheets.map((s) => (s.id === 'sheet-fresh' ? { ...s, kind: 'converter' } : s)) };
  expect(findingsOf(lostWithTheRefit, { boat: boxed, plan: { before: before(boxed) } })).toHaveLength(1);
});

test('a need knows whether its reading was aboard before', () => {
  const boat = wired(sketch({ needs: [need('log-distance', 'fresh'), need('position', 'fresh')] }));
  const entries = withSeenBefore(arriving(boat), before(boat));
  expect(entries.map(({ reading, seenBefore }) => [reading, seenBefore])).toEqual([
    ['log-distance', true],
    ['position', false],
  ]);
});

test('what the old display heard is named with the way it came by', () => {
  expect(before(screens(wired(sketch())))).toEqual([
    { reading: 'log-distance', at: 'old', by: ['log.n2k', 'old.n2k'], after: false },
  ]);
});
