import { expect, test } from 'vitest';
import { anExample } from '../../../tests/an-example.test-helper.ts';
import { quickPlan } from '../../core/quick-plan.test-helper.ts';
import { workingDays } from '../work/working-days.ts';
import { phoneWork } from './phone-work.ts';

const gannet = anExample('gannet');
const planned = quickPlan(gannet);
const work = phoneWork(gannet, planned);
if (work === undefined || planned.work === undefined) throw new Error('The Gannet has an order of her work.');
const { phases } = planned.work;

test('a phone is given every day on which somebody works, with all jobs of it', () => {
  expect(work.days.map(({ phase, day }) => [phase, day])).toEqual(
    phases.flatMap((phase) => workingDays(phase).map((day) => [phase.phase, day])),
  );
  for (const { phase, day, jobs } of work.days) {
    const starts = phases.find((one) => one.phase === phase)?.order?.starts ?? [];
    const wanted = starts.filter((start) => start.day <= day && day <= start.lastDay).map(({ job }) => job);
    expect(new Set(jobs.map(({ id }) => id))).toEqual(new Set(wanted));
  }
});

test('every step, every item of the evening and every function that is dark says what to do', () => {
  for (const { jobs, evening, dark } of work.days) {
    for (const step of jobs.flatMap(({ steps }) => steps)) expect(work.steps[step]?.length).toBeGreaterThan(3);
    for (const item of evening) expect(work.evening[item]?.length).toBeGreaterThan(3);
    for (const { name } of dark) expect(work.fallbacks[name]?.length).toBeGreaterThan(3);
  }
  expect(work.days.some(({ evening }) => evening.length > 0)).toBe(true);
});

test('a boat without an order of her work has no days', () => {
  const { work: _, ...without } = planned;
  expect(phoneWork(gannet, without)).toBeUndefined();
});
