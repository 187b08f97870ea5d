import { expect, test } from 'vitest';
import type { Work } from '../../boat/work.ts';
import { afterJobs, aJob } from '../../work/some-jobs.test-helper.ts';
import type { Job, PhaseWork, Watched } from '../../work-shape.ts';
import { told } from '../told.test-helper.ts';
import { workRules } from './index.ts';
import { aPhase, workCase } from './work-case.test-helper.ts';

const toldOf = (id: string, phase: Partial<PhaseWork>, work?: Work) =>
  told(workRules, `work/${id}`, workCase([phase], work));

const aloft = (own: Partial<Job> = {}, radar: Partial<Job> = {}) => {
  const apart = ['power-up:radar', 'power-up:gone'];
  const jobs = ['mount-aloft:lamp', 'mount-aloft:gnss'].map((id) =>
    aJob(id, { kind: 'mount-aloft', aloft: true, day: '2027-03-02', apart, ...own }),
  );
  const about = ['gnss', 'a-line'];
  return toldOf('aloft-with-live-radar', {
    jobs: [...jobs, aJob('power-up:radar', { kind: 'power-up', day: '2027-03-02', about, ...radar })],
  });
};

test('each job aloft on the day of a live radar is told, with the units switched on', () => {
  const said = (job: string) =>
    `danger gnss: On 2027-03-02 somebody is aloft for fitting aloft ${job}, and the radar is switched on for first power for radar. Nothing keeps its breaker off meanwhile. [ / ] Put them on different days, or lock the breaker of the radar off, tag it, and say so at the job.`;
  expect(aloft()).toEqual([said('GNSS on the stern rail'), said('lamp')]);
});

test('nobody is aloft with it on days that are not settled, nor in jobs left out', () => {
  const { day: _day, ...open } = aJob('power-up:radar');
  expect(aloft({ day: undefined as never }, { day: undefined as never })).toEqual([]);
  expect(aloft({}, { ...open, day: '2027-03-03' })).toEqual([]);
  expect(aloft({ leftOut: 'So.' })).toEqual([]);
  expect(aloft({}, { leftOut: 'So.' })).toEqual([]);
});

const hole = (job: Partial<Job>, work: Work = {}, phase: Partial<PhaseWork> = {}) =>
  toldOf('hole-afloat', { ...phase, jobs: [aJob('own:bore', { name: 'bore', place: 'helm', ...job })] }, work);
const own = (...holes: [id: string, throughHull: boolean][]): NonNullable<Work['own']> =>
  holes.map(([id, isHole]) => ({ id, name: 'bore', hoursH: 2, ...(isHole ? { throughHull: true } : {}) }));
const cure =
  '[ / ] Do it ashore only, with the blanking plug at hand, and look for weeping when she is lowered and again after a day afloat.';

test('a hole is told by its job and place: listed afloat, or settled for a day on which she floats', () => {
  const work = { own: own(['paint', false], ['bore', true]) };
  expect(hole({ state: 'afloat' }, work)).toEqual([
    `danger helm: Bore opens the hull below the waterline, and is listed for while she is afloat: water comes in. ${cure}`,
  ]);
  expect(hole({ id: 'underwater:display', kind: 'underwater', day: '2027-03-03' })).toEqual([
    `danger helm: Fitting below the waterline Helm display opens the hull below the waterline, and is listed for on 2027-03-03, when she is afloat: water comes in. ${cure}`,
  ]);
});

test('a job that opens no hole is none, whatever others do; nor one left out', () => {
  expect(hole({ state: 'afloat' })).toEqual([]);
  expect(hole({ state: 'afloat' }, { own: own(['bore', false]) })).toEqual([]);
  expect(hole({ state: 'afloat' }, { own: own(['other', true]) })).toEqual([]);
  expect(hole({ state: 'afloat', leftOut: 'So.' }, { own: own(['bore', true]) })).toEqual([]);
});

test('she is ashore from the first day out to the last, by her file or by days taken for her', () => {
  const days = ['2027-03-02', '2027-03-03', '2027-03-05', '2027-03-06', '2027-04-01'];
  const afloatOn = (work: Work, taken: PhaseWork['taken'] = []) =>
    days.filter((day) => hole({ day }, { ...work, own: own(['bore', true]) }, { taken }).length > 0);
  const ashore = [
    { from: '2027-01-01', to: '2027-01-02' },
    { from: '2027-03-03', to: '2027-03-05' },
  ];
  expect(afloatOn({ ashore })).toEqual(['2027-03-02', '2027-03-06', '2027-04-01']);
  expect(afloatOn({}, [{ what: 'ashore', from: 2, to: 4 }])).toEqual(['2027-03-02', '2027-03-06', '2027-04-01']);
  expect(afloatOn({}, [{ what: 'mast-down', from: 0, to: 8 }])).toEqual(days);
});

test('two holes with nothing that tells them apart but their jobs are two findings', () => {
  const jobs = ['one', 'two'].map((id) => aJob(`own:${id}`, { name: id, state: 'afloat' }));
  expect(toldOf('hole-afloat', { jobs }, { own: own(['one', true], ['two', true]) })).toHaveLength(2);
});

const panel = (id: string, own: Partial<Job> = {}) =>
  aJob(`panel:${id}`, { kind: 'panel', about: ['main-panel', 'radio.dc', 'radios'], place: 'helm', ...own });
const feed = aJob('temporary-feed', { kind: 'temporary-feed' });
const back = aJob('take-temporary-feed-out', { kind: 'take-temporary-feed-out', after: afterJobs('panel:a') });
const fed = (ways: Watched['ways'], jobs: readonly Job[], phase: Partial<PhaseWork> = {}) =>
  toldOf('pump-without-feed', { jobs: [...jobs], functions: [{ function: 'bilge-pump', hard: true, ways }], ...phase });
const way = (from: string[], until: string[]) => ({ by: [], from, until });

test('a pump without a feed is told by the jobs it is dark in, three by name', () => {
  const said = (jobs: string) =>
    `danger helm main-panel radio.dc: Nothing feeds the bilge pumps during ${jobs}, while she is afloat. A boat can fill and sink at her berth. [ / ] Lay a temporary feed with a fuse of its own from the battery first, lift the float by hand and see the pump run; take it out when the panel is back.`;
  const dark = (...ids: string[]) =>
    fed(
      [
        way(
          [],
          ids.map((id) => `panel:${id}`),
        ),
      ],
      ids.map((id) => panel(id)),
    );
  const work = (id: string) => `the work on panel ${id}`;
  expect(dark('a')).toEqual([said(work('a'))]);
  expect(dark('a', 'b', 'c')).toEqual([said(`${work('a')}, ${work('b')}, ${work('c')}`)]);
  expect(dark('a', 'b', 'c', 'd')).toEqual([said(`${work('a')}, ${work('b')}, ${work('c')} and 1 more job`)]);
  expect(dark('a', 'b', 'c', 'd', 'e')[0]).toContain(' and 2 more jobs, ');
});

test('a way bridges a job where all that makes it is done before, and nothing that ends it before the job is', () => {
  const one = panel('a', { after: afterJobs('temporary-feed') });
  const until = way([], ['panel:a']);
  const isDark = (over: Watched['ways'][number], ...jobs: Job[]) =>
    fed([until, over], [one, feed, ...jobs]).some((said) => said.includes('during the work on panel a'));
  expect(isDark(way(['temporary-feed'], ['take-temporary-feed-out']), back)).toBe(false);
  expect(isDark(way(['temporary-feed', 'own:late'], []), aJob('own:late'))).toBe(true);
  expect(isDark(way([], ['take-temporary-feed-out', 'own:soon']), back, aJob('own:soon'))).toBe(true);
  expect(isDark(way([], ['own:soon']), aJob('own:soon', { leftOut: 'So.' }))).toBe(false);
  expect(isDark(way([], ['own:gone']))).toBe(true);
  expect(isDark(way(['own:gone'], []))).toBe(true);
  const circle = [panel('a', { after: afterJobs('own:b') }), aJob('own:b', { after: afterJobs('panel:a') })];
  expect([fed([way([], ['panel:a'])], circle).length, fed([until, way(['panel:a'], [])], circle).length]).toEqual([
    1, 1,
  ]);
});

test('only jobs that end a way are told, not the one that takes the feed out, and none left out', () => {
  const ways = [way([], ['panel:a']), way([], ['take-temporary-feed-out'])];
  const survey = aJob('survey', { about: ['gnss'] });
  expect(fed(ways, [back, survey])).toEqual([]);
  expect(fed([way([], ['panel:a'])], [panel('a', { leftOut: 'So.' }), survey])).toEqual([]);
  const functions: Watched[] = [{ function: 'depth', hard: false, ways: [way([], ['panel:a'])] }];
  expect(fed([], [panel('a')], { functions })).toEqual([]);
});

test('ashore on every day of the job she needs no pump', () => {
  const found = (day: number, lastDay: number) => {
    const days = aPhase().days.map((one) => ({ ...one, afloat: one.day < 2 || one.day > 4 }));
    const starts = ['own:other', 'panel:a'].map((job, at) => ({
      ...{ job, slot: 0, lastSlot: 2, hands: [] },
      ...(at === 0 ? { day: 3, lastDay: 3 } : { day, lastDay }),
    }));
    const cost = { darkH: 0, lastDay: 0, ascents: 0 };
    const order = { hash: '', starts, dark: [], cost, bound: cost, status: 'quick' as const, work: 0 };
    return fed([way([], ['panel:a'])], [panel('a')], { days, order }).length;
  };
  expect([found(2, 4), found(1, 3), found(3, 5), found(0, 1), found(6, 7)]).toEqual([0, 1, 1, 1, 1]);
});

test('two phases are told apart, though the same is opened, or leaves, in both', () => {
  const functions: Watched[] = [{ function: 'bilge-pump', hard: true, ways: [way([], ['panel:a'])] }];
  const phases = [1, 2].map((phase) => ({ phase, jobs: [panel('a')], functions }));
  expect(told(workRules, 'work/pump-without-feed', workCase(phases))).toHaveLength(2);
  const leaves = ['leaving', 'leaving:2'].map((id) => ({
    jobs: [aJob(id, { kind: 'leaving', about: ['radio'] }), aJob('sea-trial', { kind: 'sea-trial', leftOut: 'So.' })],
  }));
  expect(told(workRules, 'work/leaves-before-trial', workCase(leaves))).toHaveLength(2);
});
