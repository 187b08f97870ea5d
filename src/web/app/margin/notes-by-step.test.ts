import fc from 'fast-check';
import { expect, test } from 'vitest';
import { levels } from '../../../core/plan-shape.ts';
import { aFinding, aPlan } from '../../../papers/lists/a-plan.test-helper.ts';
import { jobSteps } from '../../../papers/next/job-steps.ts';
import { notesOf } from './notes.ts';
import { notesByStep } from './notes-by-step.ts';

const notesFor = (findings: readonly [level: (typeof levels)[number], rule: string][]) =>
  notesOf(aPlan({ findings: findings.map(([level, rule], at) => aFinding(`f${at}`, { level, rule })) }), new Map());
const rulesOf = (notes: readonly { readonly finding: { readonly rule: string } }[]): string[] =>
  notes.map(({ finding }) => finding.rule);

test('a step shows its own notes, and a danger or a fault wherever one is', () => {
  const notes = notesFor([
    ['danger', 'power/a'],
    ['fault', 'fitting/b'],
    ['doubt', 'supply/c'],
    ['doubt', 'ways/d'],
    ['advice', 'phases/e'],
  ]);
  const { here, elsewhere, counts } = notesByStep(notes, 'lines');
  expect(rulesOf(here)).toEqual(['power/a', 'fitting/b', 'ways/d']);
  expect(rulesOf(elsewhere)).toEqual(['supply/c', 'phases/e']);
  expect(counts).toEqual([
    { step: 'power', count: 1 },
    { step: 'buy', count: 1 },
  ]);
  expect(rulesOf(notesByStep(notes, 'boat').here)).toContain('ways/d');
});

test('no note is lost or shown twice, at whatever step, and each counts at one other step', () => {
  const found = fc.array(
    fc.tuple(fc.constantFrom(...levels), fc.constantFrom('power/a', 'ways/b', 'fitting/c', 'work/d', 'novel/e')),
    { maxLength: 12 },
  );
  fc.assert(
    fc.property(found, fc.constantFrom(...jobSteps), (findings, step) => {
      const notes = notesFor(findings);
      const { here, elsewhere, counts } = notesByStep(notes, step);
      expect(new Set([...here, ...elsewhere])).toEqual(new Set(notes));
      expect(here.length + elsewhere.length).toBe(notes.length);
      expect(counts.reduce((sum, { count }) => sum + count, 0)).toBe(elsewhere.length);
      expect(counts.map(({ step: at }) => at)).not.toContain(step);
    }),
  );
});
