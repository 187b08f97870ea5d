import { readdirSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { applyEdits } from '../../core/boat/history.ts';
import { startHistory } from '../../core/boat/start-history.ts';
import { boatWith } from '../../core/kit/sloop.test-helper.ts';
import { wireHer } from '../../core/kit/wire-her.ts';
import { plan } from '../../core/plan.ts';
import { boatFromPattern } from '../../core/starting/boat-from-pattern.ts';
import { aFinding, aPlan } from '../lists/a-plan.test-helper.ts';
import { firstPlan } from './first-plan.ts';
import { jobSteps } from './job-steps.ts';
import type { NextAsked } from './next-thing.ts';
import { nextThings } from './next-things.ts';
import { stepsOfRule } from './steps-of-rule.ts';

const sloop = boatFromPattern({ pattern: 'sloop-keel-stepped', name: 'Tern', lengthM: 11 });
const planned = (boat: Boat) => ({ boat, plan: plan(boat, new Map()) });
const ids = (asked: NextAsked): string[] => nextThings(asked).map(({ id }) => id);
const done = (asked: NextAsked): string[] =>
  firstPlan(nextThings(asked)).flatMap(({ id, isDone }) => (isDone ? [id] : []));

test('a boat without places begins with them, one from a pattern with her kit', () => {
  const bare = { ...sloop, places: [], ways: [], supply: { ...sloop.supply, banks: [], panels: [] } };
  expect(ids({ boat: bare, plan: aPlan() }).slice(0, 2)).toEqual(['places', 'kit']);
  expect(nextThings(planned(sloop))[0]).toMatchObject({ id: 'kit', step: 'kit' });
  // nothing is aboard that could be tested, or that papers could be given out of
  expect(ids({ boat: bare, plan: aPlan() })).not.toContain('papers');
  expect(done({ boat: bare, plan: aPlan() })).toEqual([]);
  expect(done(planned(sloop))).toEqual(['boat']);
});

test('from a hull pattern the things lead by way of kit and wires to the tape and the order', () => {
  const aboard = planned(boatWith(sloop, ['multifunction-display-10', 'gnss-antenna-bus', 'sensor-dst-bus']));
  expect(nextThings(aboard)[0]?.id).toBe('wiring');
  expect(nextThings(aboard)[0]?.does).toMatch(/wire her so: \d+ ports? on the backbone/);
  expect(done(aboard)).toEqual(['boat', 'kit', 'needs']);
  const wired = planned(applyEdits(startHistory(aboard.boat), wireHer(aboard.boat, aboard.plan), 'Wire her so.').boat);
  const then = nextThings(wired);
  expect(then[0]).toMatchObject({ id: 'tape', step: 'boat' });
  expect(then[0]?.does).toMatch(/^Go aboard and tape or prove \d+ things before you order\.$/);
  expect(then[0]?.why).toMatch(/^\d+\.\d\d EUR of the order hang on the first: way from .+ to .+\.$/);
  expect(ids(wired)).toEqual(expect.arrayContaining(['tape', 'doubts', 'sheets', 'order', 'papers']));
  expect(done(wired)).toEqual(['boat', 'kit', 'needs', 'wires', 'sound']);
}, 20_000);

test('once the first job is ticked the jobs lead, and what is left to order comes after them', () => {
  const shopping = [
    { id: 'tee', item: 'tee', kind: 'trunk', count: 1, by: 'piece', for: [], why: '', sure: true } as const,
  ].map((one) => ({ ...one, for: [] }));
  const tape = [
    { id: 't', does: 'tape', about: sloop.ways[0]?.id ?? '', lines: [], how: [], atStake: 900 } as const,
  ].map((one) => ({ ...one, lines: [], how: [] }));
  const findings = [aFinding('a', { level: 'doubt' })];
  const boat = { ...sloop, kit: boatWith(sloop, ['vhf-whip-1m']).kit };
  const plan = aPlan({ shopping, tape, findings });
  const before = ids({ boat, plan });
  expect(before.filter((id) => ['tape', 'doubts', 'order'].includes(id))).toEqual(['tape', 'doubts', 'order']);
  const ordered = { ...boat, orders: [{ item: 'tee', state: 'ordered' as const }] };
  expect(ids({ boat: ordered, plan })).not.toContain('tape');
  expect(ids({ boat: ordered, plan })).toContain('doubts');
  const begun = ids({ boat, plan, done: new Map([['pull', '2030-04-05']]) });
  expect(begun).not.toContain('tape');
  expect(begun).not.toContain('doubts');
  expect(begun.at(-1)).toBe('order');
});

test('without needs they are asked for before anything is wired', () => {
  const aboard = boatWith(sloop, ['multifunction-display-10']);
  expect(nextThings(planned({ ...aboard, needs: [] }))[0]).toMatchObject({ id: 'needs', step: 'needs' });
});

const fine = { ...sloop, kit: boatWith(sloop, ['vhf-whip-1m']).kit, accepted: [] };

test('a danger comes first, then a fault, each at the step where most of them are mended', () => {
  const findings = [
    aFinding('a', { level: 'fault', rule: 'fitting/no-room-behind' }),
    aFinding('b', { level: 'danger', rule: 'supply/no-fuse-at-source' }),
    aFinding('c', { level: 'danger', rule: 'power/too-small' }),
    aFinding('d', { level: 'danger', rule: 'antennas/near-people' }),
  ];
  const things = nextThings({ boat: fine, plan: aPlan({ findings }) });
  expect(things[0]).toMatchObject({ id: 'danger', step: 'power', does: 'Mend 3 dangers; each says how.' });
  expect(things.find(({ id }) => id === 'fault')?.step).toBe('fit');
  const accepted = findings.map((finding) => ({ ...finding, accepted: 'so it is' }));
  const left = nextThings({ boat: fine, plan: aPlan({ findings: accepted }) }).map(({ id }) => id);
  expect(left).toContain('danger');
  expect(left).not.toContain('fault');
});

test('tests that came out wrong are asked after before those not tried; a boat with her papers given out wants none', () => {
  const plan = aPlan();
  const told = (tried: number, wrong: number) =>
    nextThings({ boat: fine, plan, tested: { total: 3, tried, wrong } }).find(({ id }) => id === 'tests')?.does;
  expect(told(3, 1)).toBe('Find out why 1 test came out wrong.');
  expect(told(3, 0)).toBeUndefined();
  expect(ids({ boat: fine, plan })).toContain('papers');
});

test('a part of the first plan is done only after all before it, whatever stands open', () => {
  const open = fc.subarray([
    'places',
    'kit',
    'needs',
    'wiring',
    'danger',
    'fault',
    'missing',
    'unfed',
    'tape',
    'doubts',
  ]);
  fc.assert(
    fc.property(open, (some) => {
      const marks = firstPlan(some.map((id) => ({ id, step: 'boat', does: '', why: '' }))).map(({ isDone }) => isDone);
      expect([...marks].sort((a, b) => Number(b) - Number(a))).toEqual(marks);
      expect(marks.every(Boolean)).toBe(some.every((id) => id === 'tape' || id === 'doubts'));
    }),
  );
});

test('every area of rules has its steps', () => {
  const areas = readdirSync(new URL('../../core/rules', import.meta.url), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name);
  expect(areas.length).toBeGreaterThan(20);
  for (const area of areas) expect(stepsOfRule(`${area}/any`).length, area).toBeLessThan(jobSteps.length);
  expect(stepsOfRule('nowhere')).toEqual(jobSteps);
  // a picture lies under the drawing of the boat
  expect(stepsOfRule('provenance/picture-not-there')).toEqual(['boat']);
});
