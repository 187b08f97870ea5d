import { expect, test } from 'vitest';
import type { SinglePoint, VitalEntry } from '../../blackouts-shape.ts';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { findingsOf, type RuleCase } from '../rule-case.test-helper.ts';
import { told } from '../told.test-helper.ts';
import { blackoutRules } from './index.ts';
import { oneFailureTakesTheLast } from './one-failure-takes-the-last.ts';

const vital = (points: SinglePoint[], own: Partial<VitalEntry> = {}): VitalEntry => ({
  of: 'position',
  at: ['display'],
  points,
  leftWith: [],
  carry: 'a chart',
  cures: [],
  ...own,
});
const of = (vitals: VitalEntry[], given: RuleCase = {}) =>
  told(blackoutRules, 'blackouts/one-failure-takes-the-last', { ...given, plan: { vitals, ...given.plan } });
const units = (...ids: string[]): SinglePoint[] => ids.map((fails) => ({ fails, how: 'unit' }));

test('three failures are named and the others counted', () => {
  expect(of([vital(units('gnss', 'display', 'compass'))])).toEqual([
    'advice gnss: With one thing out (GNSS on the stern rail; Helm display; Heading sensor at the mast) position goes off every screen. At hand then: a chart. [3 single points / ] undefined',
  ]);
  expect(of([vital(units('gnss', 'display', 'compass', 'radio', 'converter'))])).toEqual([
    'advice gnss: With one thing out (GNSS on the stern rail; Helm display; Heading sensor at the mast or 2 more) position goes off every screen. At hand then: a chart. [5 single points / ] undefined',
  ]);
});

test('the finding is about the unit a failure is of, or about what has an id', () => {
  const about = (fails: string, how: SinglePoint['how']) =>
    findingsOf(oneFailureTakesTheLast, { plan: { vitals: [vital([{ fails, how }])] } }).map((one) => one.about.join());
  expect(
    [
      about('drop:gnss.bus~nav', 'short'),
      about('nav/display.n2k', 'tee'),
      about('main-panel.bus-circuit', 'fuse'),
      about('gnss', 'unit'),
      about('charger', 'converter'),
    ].flat(),
  ).toEqual(['gnss', 'display', 'bus-circuit', 'gnss', 'charger']);
});

test('a reserve that is just cheap enough is told, of cures the one that the first cured point names', () => {
  const cures = [60_000, 40_000, 40_001].map((cost) => ({ says: `Fit one of ${cost}.`, edits: [], cost }));
  const left: Partial<VitalEntry> = {
    of: 'heading',
    leftWith: ['bowl'],
    cures: [...cures, { says: 'Ask.', edits: [] }],
  };
  const said = (...points: SinglePoint[]) => of([vital(points, left)]);
  const gnss = { fails: 'gnss', how: 'unit' } as const;
  expect(said({ ...gnss, cure: 1 })).toEqual([
    'advice gnss: With one thing out (GNSS on the stern rail) heading goes off every screen. At hand then: a chart. [1 single points / ] Fit one of 40000.',
  ]);
  expect([said({ ...gnss, cure: 2 }), said({ ...gnss, cure: 3 }), said(gnss), said({ ...gnss, cure: 9 })]).toEqual([
    [],
    [],
    [],
    [],
  ]);
  const given = {
    plan: {
      vitals: [
        vital([gnss, { ...gnss, fails: 'compass', cure: 1 }, { ...gnss, fails: 'radio', cure: 0 }], {
          ...left,
          leftWith: [],
        }),
      ],
    },
  };
  expect(findingsOf(oneFailureTakesTheLast, given).map((one) => one.cures)).toEqual([[cures[1]]]);
});

test('before the last phase nothing is said: the table tells it', () => {
  const { boat } = aBoat().unit('compass', { phase: 2 });
  expect([1, 2].map((phase) => of([vital(units('gnss'))], { boat, plan: { phase } }).length)).toEqual([0, 1]);
});
