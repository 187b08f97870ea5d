import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { emptyPlan } from '../../core/empty-plan.test-helper.ts';
import { jobKinds } from '../../core/facts/job-kinds.ts';
import { boatLog, emptyLog } from '../../core/log/boat-log.ts';
import { aJob, aPhase, aWork } from '../../core/work/a-work.test-helper.ts';
import { progressOf } from '../../core/work/progress.ts';
import { leavingTickId } from '../../core/work/ticks.ts';
import { aPlan } from '../lists/a-plan.test-helper.ts';
import { orderSays } from './cost-words.ts';
import { clockWords, dateAfter, dateWords } from './day-words.ts';
import { jobWords } from './job-words.ts';
import { lastsWords } from './lasts-words.ts';
import { leavingRows } from './leaving-rows.ts';
import { orderDateList } from './order-date-list.ts';
import { pictureOf } from './picture-of.ts';
import { daysLeftWords, progressRows } from './progress-words.ts';
import { relaxSays, stuckSays } from './stuck-words.ts';
import { workList } from './work-list.ts';
import { workNames } from './work-names.ts';
import { workText } from './work-text.ts';

const { boat } = aBoat();
const plan = { ...emptyPlan, findings: [], work: aWork() };
const names = workNames(boat, plan);
const [unit] = boat.kit;

test('a job is called by what is done to what, a job of one’s own by its own name', () => {
  expect(jobWords(names, aJob('x', { about: [unit?.id ?? ''], place: 'helm' }))).toMatch(/^Take out \S/);
  expect(jobWords(names, aJob('x', { kind: 'open-way', about: ['locker-helm'] }))).toBe(
    'Open the way electrical locker to helm dash',
  );
  expect(jobWords(names, aJob('x', { kind: 'own', name: 'varnish the dash' }))).toBe('varnish the dash');
  expect(jobWords(names, aJob('pull:locker-helm', { kind: 'pull', about: ['locker-helm', 'drop:a~b'] }))).toBe(
    'Pull 0 cables, electrical locker to helm dash',
  );
  expect(jobWords(names, aJob('power-up:backbone', { kind: 'power-up', about: ['compass'] }))).toBe(
    'Power up the backbone',
  );
  expect(jobWords(names, aJob('power-up:displays:helm', { kind: 'power-up', place: 'helm' }))).toBe(
    'Power up the displays at helm dash',
  );
  expect(jobWords(names, aJob('sea-trial:2', { kind: 'sea-trial', about: ['compass'] }))).toBe('Try at sea');
  for (const kind of jobKinds) expect(jobWords(names, aJob('an-id', { kind, about: [] })).length).toBeGreaterThan(3);
});

test('days and hours are said as on a calendar and a clock, over the end of a month', () => {
  expect(dateWords('2028-02-29')).toBe('Tue 29 Feb');
  expect(dateAfter('2027-12-30', 3)).toBe('2028-01-02');
  expect([clockWords(18, 0), clockWords(18, 15)]).toEqual(['09:00', '16:30']);
  expect(lastsWords({ slots: 6, people: 2, hoursH: { least: 2, most: 4 } })).toBe('3 h for two, usually 2 to 4 h');
});

test('an order says what it costs, how sure that is, and what it spares beside one job after another', () => {
  expect(orderSays(aPhase())).toEqual([
    '22.5 h dark when it matters, done Fri 9 Apr (proven: no order has fewer, and of those with as few none ends sooner).',
    'One after another as listed: 96 h dark when it matters, done Sun 11 Apr; this order keeps 73.5 h lit that would be dark.',
  ]);
  const { order } = aPhase();
  if (order === undefined) throw new Error('The phase of the tests has an order.');
  const gap = aPhase({ order: { ...order, status: 'gap', bound: { ...order.bound, darkH: 20 } } });
  expect(orderSays(gap)[0]).toContain('(no order has fewer than 20 h)');
});

test('work that cannot be done says why, and what would have to give', () => {
  const known = pictureOf(boat, plan, { work: plan.work, log: emptyLog });
  const stuck = { why: 'never-ashore' as const, jobs: ['survey'], functions: [], relax: [] };
  expect(stuckSays(known, stuck)).toBe(
    'It is done ashore, and she is never out of the water: “Look at what is aboard, and photograph it”.',
  );
  expect(relaxSays(known, { what: 'haul-out-days', about: [], days: 2 })).toBe('2 days more ashore');
});

test('the list of jobs is in the order of the work, what is left out last, ticked as the log has it', () => {
  const log = boatLog([{ kind: 'tick', id: 'entry0001', at: '2027-04-05T12:00:00Z', of: 'job/survey', done: true }]);
  const { columns, rows } = workList(boat, plan, log);
  const cell = (row: number, id: string) => rows[row]?.[columns.findIndex((column) => column.id === id)];
  expect(rows.map((_, at) => cell(at, 'number'))).toEqual([1, 2, 3, 4, 5, 6, 7, 8, undefined]);
  expect(cell(1, 'done')).toBe('✓ 2027-04-05');
  expect(cell(2, 'after')).toBe('2');
  expect(cell(6, 'dark')).toBe('bilge pump');
  expect(cell(8, 'job')).toContain('left out');
  expect(orderDateList(boat, plan).rows[0]?.slice(0, 5)).toEqual(['2027-04-01', 'micro-tee', 5, 'Tue 6 Apr', 5]);
});

test('old kit may go once the trial it is kept for is ticked', () => {
  const tick = (of: string, second: number) =>
    ({ kind: 'tick', id: `entry000${second}`, at: `2027-05-05T12:00:0${second}Z`, of, done: true }) as const;
  const [before] = leavingRows(names, plan.work.leaving, emptyLog);
  expect(before).toMatchObject({ mayGo: false, fate: 'nobody said where it goes' });
  const [after] = leavingRows(
    names,
    plan.work.leaving,
    boatLog([tick('job/survey', 1), tick(leavingTickId('compass', 'wipe'), 2)]),
  );
  expect(after).toMatchObject({ mayGo: true, steps: [{ isDone: true }] });
});

test('progress is said as done of all, with the days left', () => {
  const progress = progressOf(plan, emptyLog);
  expect(progressRows(progress).map(({ says }) => says)).toEqual([
    '0 of 8 jobs done',
    '0 of 0 cables pulled',
    '0 of 0 readings proved',
  ]);
  expect(daysLeftWords(progress)).toBe('4 days of work left, the last on Fri 9 Apr.');
});

test('the text of a plan says what the work comes to, and what to order first', () => {
  const text = workText(boat, { ...aPlan(), work: plan.work });
  expect(text.slice(0, 2)).toEqual(['WORK', '8 jobs on 4 days.']);
  expect(text.at(-1)).toBe('- Order first: micro-tee, by 2027-04-01.');
  expect(workText(boat, aPlan())).toEqual([]);
});
