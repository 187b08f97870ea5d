import { describe, expect, test } from 'vitest';
import type { Work } from '../boat/work.ts';
import type { Job } from '../work-shape.ts';
import { calendarOf } from './order/calendar.ts';
import { checkWorkAnswer } from './order/check-work-answer.ts';
import { solveWork } from './order/solve-work.ts';
import { workProblem } from './order/work-problem.ts';
import { type PhaseInput, planPhaseWork } from './plan-phase-work.ts';
import { afterJobs, aJob, sounderJobs, watchedDepth } from './some-jobs.test-helper.ts';

const work: Work = { ashore: [{ from: '2027-03-20', to: '2027-03-23' }], restDays: ['sun'] };
const undated: PhaseInput = {
  phase: 1,
  jobs: sounderJobs,
  functions: [watchedDepth],
  work,
  leads: new Map([['transducer', 10]]),
  answers: new Map(),
  state: { done: new Map() },
};
const input = (own: Partial<PhaseInput> = {}): PhaseInput => ({ ...undated, first: '2027-03-01', ...own });
const dateOf = (phase: ReturnType<typeof planPhaseWork>, job: string): string | undefined =>
  phase.days[phase.order?.starts.find((start) => start.job === job)?.day ?? -1]?.date;

describe('the work of a phase', () => {
  test('leaves the old sounder in until she is ashore, though it could go on the first day', () => {
    const phase = planPhaseWork(input());
    expect(dateOf(phase, 'survey')).toBe('2027-03-01');
    expect(dateOf(phase, 'haul-out')).toBe('2027-03-20');
    expect(dateOf(phase, 'take-out:old-sounder')).toBe('2027-03-20');
    expect(dateOf(phase, 'launch')).toBe('2027-03-24');
    // From the midnight of the launch to the new sounder at eleven: everything before that lies ashore.
    expect(phase.order?.cost.darkH).toBe(11);
    expect(phase.order?.plain?.darkH).toBeGreaterThan(400);
  });

  test('takes days ashore of its own where none are entered and days are only counted', () => {
    const phase = planPhaseWork({ ...undated, work: {} });
    // by the work before it would be the day after, on which nobody would have anything to do before it
    expect(phase.taken).toEqual([{ what: 'ashore', from: 1, to: 3 }]);
    expect(phase.days[2]).toMatchObject({ afloat: false, moves: false });
    expect(phase.days[0]).not.toHaveProperty('date');
    expect(phase.order).toBeDefined();
  });

  test('leaves what is done where it was done, and puts the rest from today on', () => {
    const done = new Map([
      ['survey', '2027-03-01'],
      ['take-out:old-sounder', '2027-03-02'],
    ]);
    const phase = planPhaseWork(input({ state: { today: '2027-03-21', done } }));
    expect(dateOf(phase, 'survey')).toBe('2027-03-01');
    expect(dateOf(phase, 'take-out:old-sounder')).toBe('2027-03-02');
    for (const { job, day } of phase.order?.starts ?? []) if (!done.has(job)) expect(day).toBeGreaterThanOrEqual(20);
  });

  test('begins no job before what it hangs on has come, and moves with it', () => {
    const on = (day: string): Job[] =>
      sounderJobs.map((job) =>
        job.id === 'pull:transducer' ? { ...job, waitsFor: [{ what: 'item', id: 'cable', on: day }] } : job,
      );
    expect(dateOf(planPhaseWork(input({ jobs: on('2027-04-07') })), 'pull:transducer')).toBe('2027-04-07');
    expect(dateOf(planPhaseWork(input({ jobs: on('2027-04-10') })), 'pull:transducer')).toBe('2027-04-10');
  });

  test('begins what hangs on an item not ordered yet no sooner than it would come if it were ordered today', () => {
    const jobs = sounderJobs.map(
      (job): Job => (job.id === 'pull:transducer' ? { ...job, waitsFor: [{ what: 'item', id: 'cable' }] } : job),
    );
    const state = { today: '2027-03-20', done: new Map<string, string>() };
    const phase = planPhaseWork(input({ jobs, state, leads: new Map([['cable', 18]]) }));
    expect(dateOf(phase, 'pull:transducer')).toBe('2027-04-07');
  });

  test('says on which day to order what a job wants, rest days counted', () => {
    const jobs = sounderJobs.map((job) =>
      job.id === 'underwater:transducer' ? { ...job, materials: [{ item: 'transducer', count: 1 }] } : job,
    );
    expect(planPhaseWork(input({ jobs })).orderBy).toEqual([
      { item: 'transducer', job: 'underwater:transducer', wantedOn: 19, leadDays: 10, day: 9, on: '2027-03-10' },
    ]);
  });

  test('takes an answer that was found before, and not one for other work', () => {
    const calendar = calendarOf({ work, jobs: sounderJobs, first: '2027-03-01', today: '2027-03-01' });
    const asked = { phase: 1, jobs: sounderJobs, functions: [watchedDepth], calendar, work, done: new Map() };
    const problem = workProblem(asked);
    const answer = [...solveWork(problem, { work: 50_000 })].at(-1);
    if (answer === undefined) throw new Error('No order was found.');
    expect(checkWorkAnswer(problem, answer).broken).toEqual([]);
    expect(planPhaseWork(input({ answers: new Map([[problem.hash, answer]]) })).order?.status).toBe(answer.status);
    const false_ = { ...answer, cost: { ...answer.cost, dark: 0 } };
    expect(planPhaseWork(input({ answers: new Map([[problem.hash, false_]]) })).order?.cost.darkH).toBe(11);
  });

  test('says why there is no order, where a job waits for itself by way of another', () => {
    const usual = [{ job: 'a', why: 'fixed-first' as const }];
    const jobs = [aJob('a', { after: afterJobs('b') }), aJob('b', { after: usual })];
    const phase = planPhaseWork(input({ jobs, functions: [] }));
    expect(phase.order).toBeUndefined();
    expect(phase.stuck).toMatchObject({ why: 'circle', relax: [{ what: 'unpin', about: ['a', 'b'] }] });
  });

  test('is the same in whatever order jobs, hands and ways are listed', () => {
    const hands: Work['hands'] = [
      { id: 'mate', name: 'Mate', is: 'helper' },
      { id: 'owner', name: 'Owner', is: 'owner', can: ['yard', 'aloft'] },
    ];
    const one = planPhaseWork(input({ work: { ...work, hands } }));
    const turned = sounderJobs.map((job) => ({ ...job, after: [...job.after].reverse() })).reverse();
    const functions = [{ ...watchedDepth, ways: [...watchedDepth.ways].reverse() }];
    const other = planPhaseWork(input({ jobs: turned, functions, work: { ...work, hands: [...hands].reverse() } }));
    expect(other.order).toEqual(one.order);
  });
});
