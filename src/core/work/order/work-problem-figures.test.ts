import { expect, test } from 'vitest';
import type { Work } from '../../boat/work.ts';
import type { Job } from '../../work-shape.ts';
import { afterJobs, aJob } from '../some-jobs.test-helper.ts';
import { calendarOf } from './calendar.ts';
import type { WorkItem, WorkProblem } from './problem.ts';
import { workProblem } from './work-problem.ts';

/** The question of these jobs in a phase that begins on the first of March 2027, a Monday. */
const problemOf = (
  jobs: readonly Job[],
  work: Work = {},
  {
    done = {},
    first = '2027-03-01' as string | undefined,
  }: { done?: Readonly<Record<string, string>>; first?: string | undefined } = {},
): WorkProblem => {
  const calendar = calendarOf({ work, jobs, ...(first === undefined ? {} : { first }) });
  return workProblem({ phase: 1, jobs, functions: [], calendar, work, done: new Map(Object.entries(done)) });
};
const itemOf = (jobs: readonly Job[], work?: Work, own?: Parameters<typeof problemOf>[2]): WorkItem | undefined =>
  problemOf(jobs, work, own).jobs.find(({ id }) => id === jobs[0]?.id);
const two: Work['hands'] = [
  { id: 'owner', name: 'Owner', is: 'owner', can: ['aloft'] },
  { id: 'mate', name: 'Mate', is: 'helper', can: ['radio', 'aloft'] },
];
const day = (from: string, to = from) => ({ from: `2027-03-${from}`, to: `2027-03-${to}` });

test('a plain job, whole', () => {
  expect(itemOf([aJob('a', { slots: 3, outside: true, aloft: true, apart: ['c', 'b'] })])).toEqual({
    id: 'a',
    slots: 3,
    people: 1,
    needs: [],
    after: [],
    notBefore: 0,
    outside: true,
    aloft: true,
    apart: ['b', 'c'],
  });
});

test('hands and their skills are sorted, and so are those of each day', () => {
  const { hands, days } = problemOf([aJob('a')], { hands: two });
  expect(hands).toEqual([
    { id: 'mate', can: ['aloft', 'radio'] },
    { id: 'owner', can: ['aloft'] },
  ]);
  expect(days[0]?.hands).toEqual(['mate', 'owner']);
});

test('pins, the last day of the phase, a hand and deliveries are days and hands of the calendar', () => {
  const on = (own: Partial<Job>, work: Work = {}) => itemOf([aJob('a', own)], work);
  expect(on({ day: '2027-03-04' })?.on).toBe(3);
  expect(on({}, { doneBy: '2027-03-09' })?.notAfter).toBe(8);
  expect(on({ hand: 'mate' }, { hands: two })?.hand).toBe('mate');
  expect(on({ hand: 'gone' }, { hands: two })).not.toHaveProperty('hand');
  for (const key of ['on', 'notAfter', 'hand', 'state', 'mast']) expect(on({})).not.toHaveProperty(key);
  expect(on({ state: 'ashore', mast: 'down' })).toMatchObject({ state: 'ashore', mast: 'down' });
  const waits = (...dates: (string | undefined)[]) =>
    on({
      waitsFor: dates.map((date) => ({
        what: 'x',
        ...(date === undefined ? {} : { on: date }),
      })) as unknown as Job['waitsFor'],
    })?.notBefore;
  expect([waits(), waits(undefined), waits('2027-03-06', '2027-03-03')]).toEqual([0, 0, 5]);
});

test('a lift has its day of the calendar, no state, and a pin goes before it', () => {
  const work: Work = { ashore: [day('05', '08')], mastDown: [day('03', '09')], restDays: ['sat'] };
  const lift = (kind: Job['kind'], own: Partial<Job> = {}) =>
    itemOf([aJob('a', { kind, state: 'ashore', mast: 'down', ...own })], work);
  expect(lift('haul-out')).toMatchObject({ on: 4 });
  expect(lift('haul-out')).not.toHaveProperty('state');
  expect(lift('haul-out')).not.toHaveProperty('mast');
  expect([lift('launch')?.on, lift('mast-down')?.on, lift('mast-up')?.on]).toEqual([8, 2, 8]);
  expect(lift('haul-out', { day: '2027-03-06' })?.on).toBe(5);
  expect(lift('mount')).not.toHaveProperty('on');
  expect(itemOf([aJob('a', { kind: 'launch' })])).not.toHaveProperty('on');
});

test('waits are half hours begun, the longer of two to one job, through what is left out, and never for itself or for nothing', () => {
  const after = (...links: readonly (readonly [string, number])[]): Job['after'] =>
    links.map(([job, waitH]) => ({ job, why: 'cured-first', waitH }));
  const jobs = [
    aJob('a', { after: [...after(['b', 1.2], ['b', 0.5], ['a', 3], ['gone', 3]), ...afterJobs('left')] }),
    aJob('b', { waitH: 2 }),
    aJob('left', { leftOut: 'Later.', after: after(['c', 1], ['left', 1]) }),
    aJob('c'),
  ];
  expect(itemOf(jobs)?.after).toEqual([
    { job: 'b', wait: 7 },
    { job: 'c', wait: 2 },
  ]);
  // Done by 15:00 of day 2 with 2 h more for itself and 10 h for this one: half hour 30 + 24 of that day, past midnight.
  const late = [aJob('a', { after: after(['b', 10]) }), aJob('b', { waitH: 2 })];
  expect(itemOf(late, {}, { done: { b: '2027-03-03' } })).toMatchObject({ after: [], notBefore: 3 });
  const soon = [aJob('a', { after: after(['b', 6]) }), aJob('b', { waitH: 2 })];
  expect(itemOf(soon, {}, { done: { b: '2027-03-03' } })).toMatchObject({ after: [], notBefore: 2 });
});

test('days that nobody entered are taken for what is done ashore or with the mast down, and no others', () => {
  const jobs = [aJob('a', { state: 'ashore' }), aJob('b', { mast: 'down' })];
  const { taken, days } = calendarOf({ work: {}, jobs, first: '2027-03-01' });
  const daysOf = (what: string) =>
    taken.filter((one) => one.what === what).flatMap(({ from, to }) => days.slice(from, to + 1).map((one) => one.day));
  expect(daysOf('ashore').length).toBeGreaterThan(0);
  expect(daysOf('mast-down').length).toBeGreaterThan(0);
  expect(days.filter(({ afloat }) => !afloat).map((one) => one.day)).toEqual(daysOf('ashore'));
  expect(days.filter(({ mast }) => mast === 'down').map((one) => one.day)).toEqual(daysOf('mast-down'));
  const [ashore] = calendarOf({ work: {}, jobs: jobs.slice(0, 1), first: '2027-03-01' }).taken;
  expect(ashore?.what).toBe('ashore');
  expect(calendarOf({ work: {}, jobs: jobs.slice(0, 1) }).days.every(({ mast }) => mast === 'up')).toBe(true);
});

test('who is away is missing alone, and what takes no time takes none at any pace', () => {
  const away: Work['hands'] = two.map((hand) => (hand.id === 'mate' ? { ...hand, away: [day('02')] } : hand));
  const { days } = problemOf([aJob('a')], { hands: away });
  expect(days.slice(0, 3).map(({ hands }) => hands)).toEqual([['mate', 'owner'], ['owner'], ['mate', 'owner']]);
  expect(itemOf([aJob('a', { slots: 0 })])?.slots).toBe(0);
});

test('needs are those somebody has, and radio where hands are entered', () => {
  const needs = (work: Work) => itemOf([aJob('a', { needs: ['yard', 'radio', 'aloft'] })], work)?.needs;
  expect(needs({ hands: two })).toEqual(['aloft', 'radio']);
  expect(needs({ hands: two.slice(0, 1) })).toEqual(['aloft', 'radio']);
  const fitter: Work['hands'] = [...two, { id: 'fitter', name: 'Fitter', is: 'professional', can: ['yard'] }];
  expect(needs({ hands: fitter })).toEqual(['aloft', 'radio', 'yard']);
  expect(needs({})).toEqual(['aloft', 'radio', 'yard']);
});

test('a calendar is long enough at half pace with its days of rest, two weeks more, and to the last date that is named', () => {
  const length = (jobs: readonly Job[], work: Work = {}, own: object = {}) =>
    calendarOf({ work, jobs, first: '2027-03-01', ...own }).days.length;
  const jobs = [aJob('a', { slots: 12 }), aJob('b', { slots: 12 })];
  const bare = length(jobs);
  // Two days’ work at half pace and two weeks; with a wait of two days between them two days more.
  expect(bare).toBe(4 + 14);
  const waiting = aJob('b', { slots: 12, after: [{ job: 'a', why: 'cured-first', waitH: 48 }] });
  expect(length([aJob('a', { slots: 12 }), waiting])).toBe(bare + 2);
  expect(length(jobs, { restDays: ['sat', 'sun'] })).toBeGreaterThan(bare);
  expect(length(jobs, {}, { stretch: 3 })).toBe(bare + 6);
  expect(length(jobs, { left: [day('20')] })).toBe(bare + 19);
  expect(length(jobs, { hands: [{ id: 'owner', name: 'Owner', is: 'owner', away: [day('11')] }] })).toBe(bare + 10);
  expect(length(jobs, {}, { today: '2027-03-06' })).toBe(bare + 5);
  expect(length([aJob('a', { slots: 12, day: '2027-03-31' }), aJob('b', { slots: 12 })])).toBe(bare + 30);
  expect(calendarOf({ work: { left: [day('20')] }, jobs }).days).toHaveLength(bare);
  expect(length(jobs, { left: [{ from: '2027-03-01', to: '2037-03-01' }] })).toBe(1100);
});

test('a calendar without a first day has no dates, no rest and no windows; work ends before midnight', () => {
  const work: Work = { restDays: ['mon'], ashore: [day('01', '31')], moves: [day('05')], left: [day('01')] };
  const calendar = calendarOf({ work, jobs: [aJob('a')] });
  expect(calendar).not.toHaveProperty('first');
  expect(calendar.days[0]).toEqual({
    day: 0,
    hands: ['owner'],
    afloat: true,
    mast: 'up',
    foul: false,
    moves: true,
    left: false,
  });
  const dated = calendarOf({ work, jobs: [aJob('a')], first: '2027-03-01' });
  expect(dated.days[0]).toMatchObject({ date: '2027-03-01', hands: [], afloat: false, moves: false, left: true });
  const moving = calendarOf({ work: { moves: [day('02'), day('05')] }, jobs: [aJob('a')], first: '2027-03-01' }).days;
  expect(moving.slice(0, 5).map(({ moves }) => moves)).toEqual([false, true, false, false, true]);
  expect(calendarOf({ work: { fromH: 20, hoursADay: 8 }, jobs: [aJob('a')] })).toMatchObject({ from: 40, perDay: 7 });
});
