import { expect, test } from 'vitest';
import type { SinglePoint, VitalEntry } from '../../blackouts-shape.ts';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { plan } from '../../plan.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { oneFailureTakesTheLast } from './one-failure-takes-the-last.ts';

const vital = (points: SinglePoint[], over: Partial<VitalEntry> = {}): VitalEntry => ({
  of: 'position',
  at: ['display'],
  points,
  leftWith: [],
  carry: 'a chart',
  cures: [],
  ...over,
});
const found = (...vitals: VitalEntry[]) => findingsOf(oneFailureTakesTheLast, { plan: { vitals } });
const gnss: SinglePoint = { fails: 'gnss', how: 'unit' };

test('a reading that no small piece takes passes, and so does one that is only in doubt', () => {
  expect(found(vital([]))).toEqual([]);
  expect(
    found(
      vital([
        { fails: 'house', how: 'bank' },
        { fails: 'locker-stern', how: 'way' },
      ]),
    ),
  ).toEqual([]);
  expect(found(vital([{ ...gnss, perhaps: true }]))).toEqual([]);
});

test('the only source of position is advice, gathered with whatever else takes it', () => {
  const fuse: SinglePoint = { fails: 'main-panel.bus-circuit', how: 'fuse' };
  const [one, ...others] = found(vital([gnss, fuse]));
  expect(one).toMatchObject({ level: 'advice', about: ['gnss'], measured: { value: 2, unit: 'single points' } });
  expect(one?.says).toContain('GNSS on the stern rail; Breaker bus-circuit of panel main-panel');
  expect(one?.says).toContain('a chart');
  expect(others).toEqual([]);
  expect(found(vital([fuse]))).toMatchObject([{ about: ['bus-circuit'] }]);
});

test('where something is left to go by, only a cheap cure is worth a word', () => {
  const cure = (cost: number) => ({ says: 'Fit another.', edits: [], cost });
  const point = { ...gnss, cure: 0 };
  const left: Partial<VitalEntry> = { of: 'heading', leftWith: ['bowl'] };
  expect(found(vital([point], { ...left, cures: [cure(60_000)] }))).toEqual([]);
  expect(found(vital([point], { ...left, cures: [cure(30_000)] }))).toMatchObject([{ cure: 'Fit another.' }]);
});

test('the last radio counts whatever takes it', () => {
  const [one] = found(vital([{ fails: 'house', how: 'bank' }], { of: 'radio', at: ['radio'] }));
  expect(one).toMatchObject({ about: ['house'] });
  expect(one?.says).toContain('nobody aboard can talk');
});

test('on the Tern the only radio and the only source of position are told, with a radio of its own as cure', () => {
  const findings = plan(aBoat().boat, new Map()).findings.filter(({ rule }) => rule === oneFailureTakesTheLast.id);
  expect(findings.map(({ id }) => id.split(':').at(-1)).sort()).toEqual(['heading', 'position', 'radio']);
  expect(findings.find(({ id }) => id.endsWith(':radio'))?.cure).toMatch(/handheld/);
});
