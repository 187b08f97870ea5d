import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { Work } from '../../boat/work.ts';
import { afterJobs, aJob } from '../../work/some-jobs.test-helper.ts';
import type { Job, PhaseWork, Stuck } from '../../work-shape.ts';
import { told } from '../told.test-helper.ts';
import { workRules } from './index.ts';
import { aPhase, workCase } from './work-case.test-helper.ts';

const toldOf = (id: string, phase: Partial<PhaseWork>, work?: Work) =>
  told(workRules, `work/${id}`, workCase([phase], work));

const unsaid = (...panels: Partial<Job>[]): Partial<PhaseWork> => ({
  jobs: [
    aJob('survey', { about: ['main-panel'] }),
    ...panels.map((own, at) => aJob(`panel:${at}`, { kind: 'panel', ...own })),
  ],
  functions: [
    { function: 'bilge-pump', hard: true, ways: [], unknown: true },
    { function: 'horn', hard: false, ways: [] },
    { function: 'steering', hard: false, ways: [], unknown: true },
  ],
});

test('what hangs on nobody knows what is named, with how many panels are opened', () => {
  const says = (opened: string) =>
    `doubt : ${opened} opened, and nobody has said what these hang on: bilge pumps, steering. Every panel is taken to put them out. [ / ] Say at the step Work which circuit or bank each hangs on, or that she has none.`;
  const one = unsaid({ about: ['main-panel', 'a-line'] }, { about: ['main-panel'] });
  expect(toldOf('essentials-unsaid', one)).toEqual([says('A panel is')]);
  const { boat } = aBoat().change(({ supply }) => {
    const [panel] = supply.panels;
    if (panel !== undefined) supply.panels.push({ ...panel, id: 'second-panel' });
  });
  const two = workCase([unsaid({ about: ['main-panel'] }, { about: ['second-panel'] })], {}, boat);
  expect(told(workRules, 'work/essentials-unsaid', two)).toEqual([says('2 panels are')]);
});

test('nothing is unsaid where no panel is opened, or nothing is settled of the work', () => {
  expect(toldOf('essentials-unsaid', unsaid({ leftOut: 'So.', about: ['main-panel'] }))).toEqual([]);
  expect(toldOf('essentials-unsaid', unsaid())).toEqual([]);
  const { plan } = workCase([unsaid({ about: ['main-panel'] })]);
  expect(told(workRules, 'work/essentials-unsaid', { ...(plan && { plan }) })).toEqual([]);
});

test('jobs that are not there are named, and none where nothing is settled or nothing planned', () => {
  const cure = '[ / ] Take it out, or say it of the job that has taken its place.';
  const own: Work['own'] = [{ id: 'paint', name: 'Paint', hoursH: 1 }];
  const settled = (...jobs: string[]) =>
    toldOf('job-not-there', { jobs: [aJob('survey')] }, { own, jobs: jobs.map((job) => ({ job })) });
  expect(settled('survey', 'label')).toEqual([
    `doubt label: The boat file settles something of a job that is not in the plan: label. It does nothing. ${cure}`,
  ]);
  expect(settled('label', 'cut')).toEqual([
    `doubt cut label: The boat file settles something of jobs that are not in the plan: label, cut. It does nothing. ${cure}`,
  ]);
  expect(told(workRules, 'work/job-not-there', { plan: { work: { phases: [aPhase()], leaving: [] } } })).toEqual([]);
  expect(told(workRules, 'work/job-not-there', workCase([], { jobs: [{ job: 'label' }] }))).toEqual([]);
  const { boat } = workCase([], { jobs: [{ job: 'label' }] });
  expect(told(workRules, 'work/job-not-there', { ...(boat && { boat }) })).toEqual([]);
});

test('one circle is told at a time, without the jobs that only lead to it', () => {
  const ring = (...ids: string[]) =>
    ids.map((id, at) => aJob(`own:${id}`, { name: id, after: afterJobs(`own:${ids[at + 1] ?? ids[0]}`, 'own:gone') }));
  const jobs = [
    aJob('own:tail', { name: 'tail', after: afterJobs('own:a') }),
    ...ring('a', 'b', 'c'),
    ...ring('d', 'e'),
  ];
  const said = [
    'fault own:a own:b own:c: None of these ever begins, for each waits for the next: a; b; c; and that one for the first. [ / ] Take one of the waits out that you put in yourself.',
  ];
  expect(toldOf('jobs-in-a-circle', { jobs })).toEqual(said);
  expect(toldOf('jobs-in-a-circle', { jobs: jobs.slice(1) })).toEqual(said);
  const both = [aJob('own:top', { after: afterJobs('own:a', 'own:d') }), ...jobs];
  expect(toldOf('jobs-in-a-circle', { jobs: both })).toEqual(said);
});

const leaving = (own: Partial<Job>, ...trials: Partial<Job>[]) =>
  toldOf('leaves-before-trial', {
    jobs: [
      aJob('take-out', { kind: 'take-out', day: '2027-03-01' }),
      aJob('leaving', { kind: 'leaving', about: ['radio', 'old-log'], ...own }),
      ...trials.map((trial, at) => aJob(`sea-trial:${at}`, { kind: 'sea-trial', ...trial })),
    ],
  });

test('units that leave too early are told by name, with the day or that no trial is made', () => {
  const said = (why: string) =>
    `doubt old-log radio: Old radio, old-log: to leave ${why}. What the new set cannot do shows at sea only. [ / ] Keep what goes, with its cables, until the sea trial has passed.`;
  const day = '2027-03-04';
  const before = said('on 2027-03-04, before the sea trial on 2027-03-05');
  expect(leaving({ day }, { day: '2027-03-03' }, {}, { day: '2027-03-05' })).toEqual([before]);
  const out = said('though the sea trial is left out');
  expect(leaving({ day }, { leftOut: 'So.' }, { leftOut: 'So.' })).toEqual([out]);
  expect(leaving({ day }, { leftOut: 'So.', day: '2027-03-05' })).toEqual([out]);
});

test('they may leave on the day of the trial, when one of two is left out, or where there is none to wait for', () => {
  const day = '2027-03-04';
  expect(leaving({ day }, { day })).toEqual([]);
  expect(leaving({}, { day: '2027-03-05' })).toEqual([]);
  expect(leaving({ day }, { day: '2027-03-03' }, { leftOut: 'So.', day: '2027-03-05' })).toEqual([]);
  expect(leaving({ day })).toEqual([]);
  expect(leaving({ day, leftOut: 'So.' }, { leftOut: 'So.' })).toEqual([]);
});

const stuckBy = (own: Partial<Stuck>, phase: Partial<PhaseWork> = {}) => {
  const jobs = ['a', 'b', 'c', 'd', 'e'].map((id) => aJob(`own:${id}`, { name: id }));
  return toldOf('no-order', {
    jobs,
    stuck: { why: 'nobody-can', jobs: [], functions: [], relax: [], ...own },
    ...phase,
  });
};

test('a phase without an order names three jobs and what would be dark; five jobs point at nothing', () => {
  const named = (ids: string[], own: Partial<Stuck> = {}) =>
    stuckBy({ jobs: ids.map((id) => `own:${id}`), ...own })[0]
      ?.match(/^fault (.*): The .* for (.*)\. \[/)
      ?.slice(1);
  const why = 'nobody there may do some of them';
  expect(named(['a', 'x'])).toEqual(['own:a own:x', `${why}: a`]);
  expect(named(['a', 'b', 'c'])).toEqual(['own:a own:b own:c', `${why}: a, b, c`]);
  expect(named(['d', 'c', 'b', 'a'])).toEqual(['own:a own:b own:c own:d', `${why}: d, c, b …`]);
  expect(named(['a', 'b', 'c', 'd', 'e'])).toEqual(['', `${why}: a, b, c …`]);
  expect(named([])).toEqual(['', why]);
  const dark = { why: 'dark-though-never' as const, functions: ['horn' as const, 'depth' as const] };
  expect(named(['a'], dark)).toEqual(['own:a', 'something would be dark that may never be: a, horn, depth']);
  expect(named(['a'], { why: 'too-few-days' })).toEqual(['own:a', 'there are too few days']);
});

test('each thing that alone would be enough is told once, with its days; where nothing is, what to do', () => {
  const enough = (...relax: Stuck['relax']) => stuckBy({ relax })[0]?.match(/\[ \/ \] (.*)$/)?.[1];
  const one = (what: Stuck['relax'][number]['what'], days?: number) => ({ what, about: [], ...(days && { days }) });
  expect(enough(one('days', 2), one('haul-out-days', 3), one('mast-days', 4), one('earlier', 5))).toBe(
    'Any one of these is enough: 2 days more; 3 days more ashore; 4 days more with the mast down; it here 5 days earlier.',
  );
  expect(enough(one('hand'), one('unpin'), one('hand'), one('temporary-feed'), one('leave-out'))).toBe(
    'Any one of these is enough: somebody more who can; a settled day or wait let go; a temporary feed; a job left out.',
  );
  expect(enough()).toBe('Let go of settled days, or give it more days and hands.');
});

test('two phases without an order are told apart', () => {
  const stuck: Stuck = { why: 'too-few-days', jobs: [], functions: [], relax: [] };
  expect(told(workRules, 'work/no-order', workCase([1, 2].map((phase) => ({ phase, stuck }))))).toHaveLength(2);
});
