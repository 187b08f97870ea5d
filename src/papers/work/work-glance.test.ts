import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { emptyPlan } from '../../core/empty-plan.test-helper.ts';
import { aWork } from '../../core/work/a-work.test-helper.ts';
import type { PathShape } from '../drawing/shapes.ts';
import { jobNumbers } from './job-numbers.ts';
import { workGlance } from './work-glance.ts';
import { workNames } from './work-names.ts';

const { phases } = aWork();
const glance = (done: readonly string[] = [], of = phases) =>
  workGlance({
    names: workNames(aBoat().boat, emptyPlan),
    phases: of,
    numbers: jobNumbers({ phases: of }),
    done: new Set(done),
  });

const filled = (ink: string, done: readonly string[] = []): number =>
  glance(done)?.drawing.shapes.filter((shape): shape is PathShape => shape.kind === 'path' && shape.fill === ink)
    .length ?? 0;

test('there is a bar for each job that somebody does, and it is hollow once it is ticked', () => {
  const worked = phases.flatMap(({ order }) => order?.starts ?? []).filter(({ hands }) => hands.length > 0);
  expect(filled('data')).toBe(worked.length);
  expect(filled('data', ['survey'])).toBe(worked.length - 1);
  expect(filled('paper', ['survey'])).toBe(1);
});

test('what is dark when it matters is marked, and nothing is drawn past the edge', () => {
  const dark = phases.flatMap(({ order }) => order?.dark ?? []).filter(({ hoursH }) => hoursH > 0);
  expect(dark.length).toBeGreaterThan(0);
  expect(filled('accent')).toBe(dark.length);
});

test('whatever place is pressed leads to the day that stands there', () => {
  const own = glance();
  if (own === undefined) throw new Error('there is work');
  fc.assert(
    fc.property(fc.double({ min: 0, max: own.drawing.widthMm - 0.001, noNaN: true }), (xMm) => {
      const at = own.dayAt(xMm);
      const [leftMm, rightMm] = (at && own.edgesOf(at.phase, at.day)) ?? [Number.NaN, Number.NaN];
      expect(leftMm).toBeLessThanOrEqual(xMm);
      expect(rightMm).toBeGreaterThan(xMm);
    }),
  );
  expect(own.dayAt(own.drawing.widthMm + 1)).toBeUndefined();
});

test('no work has no picture', () => {
  expect(glance([], [])).toBeUndefined();
});
