import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { emptyPlan } from '../../core/empty-plan.test-helper.ts';
import { emptyLog } from '../../core/log/boat-log.ts';
import { aJob, aPhase } from '../../core/work/a-work.test-helper.ts';
import { daySheet } from './day-sheet.ts';
import { pictureOf } from './picture-of.ts';
import { workingDays } from './working-days.ts';

const phase = aPhase();
const work = { phases: [phase], leaving: [] };
const input = pictureOf(aBoat().boat, emptyPlan, { work, log: emptyLog });

test('a day has its jobs in order, each with who does it, where and when', () => {
  const { title, says, jobs } = daySheet(input, phase, 1);
  expect([title, says]).toEqual(['Tue 6 Apr', 'afloat; the owner and the mate']);
  expect(jobs.map(({ number, when, hands }) => [number, when, hands])).toEqual([
    [5, '09:00 to 11:00', 'the owner'],
    [6, '11:00 to 15:00', 'the mate and the owner'],
  ]);
});

test('what is dark tonight is told with what to have ready, and what is lit again by then is not', () => {
  const [depth] = daySheet(input, phase, 0).dark;
  expect(depth).toMatchObject({ id: 'depth', isTonight: true, when: 'from 13:30 to Tue 6 Apr 11:00' });
  expect(depth?.fallback).toContain('lead line');
  expect(daySheet(input, phase, 1).dark.map(({ id, isTonight }) => [id, isTonight])).toEqual([['depth', false]]);
  expect(daySheet(input, phase, 4).dark).toEqual([]);
});

test('the float is lifted at the end of each day, but for one on which she stands ashore', () => {
  const idsOn = (day: number): string[] => daySheet(input, phase, day).evening.map(({ id }) => id);
  expect(idsOn(0)).toEqual(['day/1.0:pump-lifted', 'day/1.0:ends-insulated', 'day/1.0:off-on-panel']);
  expect(idsOn(4)).not.toContain('day/1.4:pump-lifted');
});

test('tools of several jobs are brought once, and what they take is counted together', () => {
  const jobs = phase.jobs.map((job) =>
    ['survey', 'label'].includes(job.id)
      ? aJob(job.id, { kind: job.kind, tools: ['torch', 'labels'], materials: [{ item: 'micro-tee', count: 2 }] })
      : job,
  );
  const { tools, materials } = daySheet(input, { ...phase, jobs }, 0);
  expect(tools).toEqual(['torch and mirror', 'labels and pen']);
  expect(materials).toEqual(['4 × micro-tee']);
});

test('days on which somebody works are told in order, without the day of rest', () => {
  expect(workingDays(phase)).toEqual([0, 1, 2, 4]);
});
