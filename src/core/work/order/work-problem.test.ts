import { describe, expect, test } from 'vitest';
import type { Work } from '../../boat/work.ts';
import type { Job, Watched } from '../../work-shape.ts';
import { afterJobs, aJob } from '../some-jobs.test-helper.ts';
import { calendarOf } from './calendar.ts';
import type { WorkProblem } from './problem.ts';
import { workProblem } from './work-problem.ts';

const watched = (id: Watched['function'], hard = false): Watched => ({
  function: id,
  hard,
  ways: [
    { by: ['old'], from: [], until: ['out'] },
    { by: ['new'], from: ['in'], until: [] },
  ],
});
const outAndIn = [aJob('out'), aJob('in', { after: afterJobs('out') })];

const problemOf = ({
  jobs = outAndIn,
  functions = [],
  work = {},
  done = new Map(),
  today,
}: {
  readonly jobs?: readonly Job[];
  readonly functions?: readonly Watched[];
  readonly work?: Work;
  readonly done?: ReadonlyMap<string, string>;
  readonly today?: string;
}): WorkProblem => {
  const first = '2027-03-01';
  const open = jobs.filter(({ id }) => !done.has(id));
  const calendar = calendarOf({ work, jobs: open, first, ...(today === undefined ? {} : { today }) });
  return workProblem({ phase: 1, jobs, functions, calendar, work, done });
};
const itemOf = (problem: WorkProblem, id: string): WorkProblem['jobs'][number] | undefined =>
  problem.jobs.find((job) => job.id === id);

describe('the calendar of the work', () => {
  test('has six hours from nine, one hand who can all, and light from eight to six where nobody said otherwise', () => {
    const { perDay, from, hands, days } = problemOf({});
    expect({ perDay, from, hands }).toEqual({
      perDay: 12,
      from: 18,
      hands: [{ id: 'owner', can: ['aloft', 'electrics', 'radio', 'yard'] }],
    });
    expect(days[0]).toMatchObject({ afloat: true, mast: 'up', foul: false, light: [16, 36] });
  });

  test('nobody works on days of rest, on days on which she is left, when away, or before today', () => {
    const work: Work = {
      restDays: ['sun'],
      left: [{ from: '2027-03-09', to: '2027-03-10' }],
      hands: [
        { id: 'mate', name: 'Mate', is: 'helper', away: [{ from: '2027-03-03', to: '2027-03-03' }] },
        { id: 'owner', name: 'Owner', is: 'owner' },
      ],
    };
    const { days } = problemOf({ work, today: '2027-03-02' });
    expect(days.slice(0, 11).map(({ hands }) => hands.length)).toEqual([0, 2, 1, 2, 2, 2, 0, 2, 0, 0, 2]);
  });
});

describe('the question of the order', () => {
  test('counts pumps whenever she floats, charging while she is left, AIS where it is wanted, the others when she must move', () => {
    const functions = [watched('bilge-pump', true), watched('depth'), watched('ais'), watched('shore-charging')];
    const work: Work = {
      ashore: [{ from: '2027-03-04', to: '2027-03-04' }],
      moves: [{ from: '2027-03-02', to: '2027-03-04' }],
      left: [{ from: '2027-03-01', to: '2027-03-01' }],
    };
    const counts = (aisWanted: boolean): readonly (readonly string[])[] =>
      problemOf({ functions, work: { ...work, aisWanted } })
        .days.slice(0, 5)
        .map((day) => day.counts);
    expect(counts(false)).toEqual([
      ['bilge-pump', 'shore-charging'],
      ['bilge-pump', 'depth'],
      ['bilge-pump', 'depth'],
      [],
      ['bilge-pump'],
    ]);
    expect(counts(true)[1]).toEqual(['ais', 'bilge-pump', 'depth']);
  });

  test('has nothing in it of what is done or left out, but for what still cures', () => {
    const jobs = [
      aJob('seal', { waitH: 48 }),
      aJob('out', { after: [{ job: 'seal', why: 'cured-first' }] }),
      aJob('mount', { leftOut: 'Later.', after: afterJobs('out') }),
      aJob('in', { after: afterJobs('mount') }),
    ];
    const problem = problemOf({ jobs, done: new Map([['seal', '2027-03-02']]), today: '2027-03-03' });
    expect(problem.jobs.map(({ id }) => id)).toEqual(['in', 'out']);
    // Done by 15:00 of day 1, so cured by 15:00 of day 3.
    expect(itemOf(problem, 'out')).toMatchObject({ after: [], notBefore: 3 });
    expect(itemOf(problem, 'in')?.after).toEqual([{ job: 'out', wait: 0 }]);
  });

  test('knows which ways are gone and which are there, once jobs are done', () => {
    const ways = (done: ReadonlyMap<string, string>) => problemOf({ functions: [watched('depth')], done }).functions;
    expect(ways(new Map())[0]?.ways).toEqual([
      { from: ['in'], until: [] },
      { from: [], until: ['out'] },
    ]);
    expect(ways(new Map([['out', '2027-03-01']]))).toEqual([
      { id: 'depth', hard: false, ways: [{ from: ['in'], until: [] }] },
    ]);
    // With both done nothing hangs on the order any more.
    expect(
      ways(
        new Map([
          ['out', '2027-03-01'],
          ['in', '2027-03-01'],
        ]),
      ),
    ).toEqual([]);
  });

  test('goes by the pace of whoever does it, the slowest where nobody is named', () => {
    const work: Work = {
      hands: [
        { id: 'owner', name: 'Owner', is: 'owner', pace: 1.5 },
        { id: 'pro', name: 'Fitter', is: 'professional', pace: 0.5 },
      ],
    };
    const problem = problemOf({ jobs: [aJob('out', { slots: 4 }), aJob('in', { slots: 4, hand: 'pro' })], work });
    expect(problem.jobs.map(({ id, slots }) => [id, slots])).toEqual([
      ['in', 2],
      ['out', 6],
    ]);
  });

  test('calls somebody in for what takes two where there is one hand, and asks for a radio installer only where hands are named', () => {
    const jobs = [aJob('out', { people: 2, needs: ['radio', 'electrics'] })];
    expect(itemOf(problemOf({ jobs }), 'out')).toMatchObject({ people: 1, needs: ['electrics', 'radio'] });
    const hands: Work['hands'] = [
      { id: 'mate', name: 'Mate', is: 'helper' },
      { id: 'owner', name: 'Owner', is: 'owner' },
    ];
    expect(itemOf(problemOf({ jobs, work: { hands } }), 'out')).toMatchObject({ people: 2, needs: ['radio'] });
  });

  test('lifts her out on the first day ashore and in again on the first after the last', () => {
    const jobs = [
      aJob('haul-out', { kind: 'haul-out', state: 'ashore' }),
      aJob('launch', { kind: 'launch', state: 'afloat', after: afterJobs('haul-out') }),
    ];
    const problem = problemOf({
      jobs,
      work: { ashore: [{ from: '2027-03-05', to: '2027-03-08' }], restDays: ['fri'] },
    });
    expect(itemOf(problem, 'haul-out')?.on).toBe(5);
    expect(itemOf(problem, 'launch')?.on).toBe(8);
  });
});
