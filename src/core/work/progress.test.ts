import { expect, test } from 'vitest';
import { emptyPlan } from '../empty-plan.test-helper.ts';
import { boatLog } from '../log/boat-log.ts';
import type { LogEntry } from '../log/log-entry.ts';
import type { LineEntry, ReadingEntry } from '../plan-shape.ts';
import type { TestEntry } from '../tests-shape.ts';
import { aWork } from './a-work.test-helper.ts';
import { progressOf } from './progress.ts';
import { doneJobs, jobTickId, stepTickId } from './ticks.ts';

const line = { id: 'drop:bus/compass', kind: 'drop' } as LineEntry;
const reading = { reading: 'depth', at: 'display', rests: 'typical' } as ReadingEntry;
const shown = { id: 'dock/shown:depth', test: 'shown', reading: 'depth', about: ['display'] } as TestEntry;
const plan = { ...emptyPlan, work: aWork(), lines: [line], readings: [reading], tests: [shown] };

const tick = (of: string, at = '2027-04-05T12:00:00Z', done = true): LogEntry => ({
  kind: 'tick',
  id: `entry${at.replace(/\D/g, '')}${of.length}`,
  at,
  of,
  done,
});

test('nothing is done before the first tick, and what is left out is not counted', () => {
  expect(progressOf(plan, boatLog([]))).toEqual({
    jobs: { done: 0, total: 8 },
    hoursH: { done: 0, total: 19.5 },
    cables: { done: 0, total: 1 },
    readings: { done: 0, total: 1 },
    daysLeft: 4,
    lastOn: '2027-04-09',
  });
});

test('a job ticked counts with its cable, a step of it alone does not, and one taken back no more', () => {
  const log = boatLog([
    tick(stepTickId('survey', 'photograph')),
    tick(jobTickId('pull:drop'), '2027-04-06T15:00:00Z'),
    tick(jobTickId('label'), '2027-04-05T15:00:00Z'),
    tick(jobTickId('label'), '2027-04-05T16:00:00Z', false),
  ]);
  expect(progressOf(plan, log)).toMatchObject({ jobs: { done: 1 }, hoursH: { done: 2 }, cables: { done: 1 } });
  expect([...doneJobs(log)]).toEqual([['pull:drop', '2027-04-06']]);
});

test('a reading seen right at its screen is proved', () => {
  const log = boatLog([
    { kind: 'reading', id: 'entry0001', at: '2027-04-09T12:00:00Z', test: 'dock/shown:depth', right: true },
  ]);
  expect(progressOf(plan, log).readings).toEqual({ done: 1, total: 1 });
});

test('days are left as long as something is to do on them, and nobody tells how many where there is no order', () => {
  const ticks = ['survey', 'paper:licence', 'label', 'take-out:compass', 'pull:drop', 'mount:display'].map((job, at) =>
    tick(jobTickId(job), `2027-04-06T15:00:${String(at).padStart(2, '0')}Z`),
  );
  expect(progressOf(plan, boatLog(ticks)).daysLeft).toBe(2);
  const { order: _, ...stuck } = aWork().phases[0] ?? {};
  // reason: a phase without an order says why instead; only that it has none counts here
  const without = { ...plan, work: { leaving: [], phases: [stuck as (typeof plan.work.phases)[number]] } };
  expect(progressOf(without, boatLog([])).daysLeft).toBeUndefined();
});
