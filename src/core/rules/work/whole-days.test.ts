import { expect, test } from 'vitest';
import type { Work } from '../../boat/work.ts';
import { afterJobs, aJob } from '../../work/some-jobs.test-helper.ts';
import type { Job, JobStart, PhaseWork } from '../../work-shape.ts';
import { told } from '../told.test-helper.ts';
import { workRules } from './index.ts';
import { waiting, workCase } from './work-case.test-helper.ts';

const toldOf = (id: string, phase: Partial<PhaseWork>, work?: Work) =>
  told(workRules, `work/${id}`, workCase([phase], work));

type Dark = NonNullable<PhaseWork['order']>['dark'][number];
const begun = (job: string, day: number, slot: number): JobStart => ({
  job,
  day,
  slot,
  lastDay: day,
  lastSlot: 9,
  hands: [],
});
const orderOf = (dark: readonly Dark[]): NonNullable<PhaseWork['order']> => ({
  hash: '',
  starts: [begun('take-out:radio', 4, 2), begun('survey', 4, 2), begun('label', 4, 3), begun('paint', 3, 2)],
  dark: [...dark],
  cost: { darkH: 0, lastDay: 0, ascents: 0 },
  bound: { darkH: 0, lastDay: 0, ascents: 0 },
  status: 'quick',
  work: 0,
});
const darkFrom = (day: number, slot: number, to: number): Dark => ({
  function: 'depth',
  from: { day, slot },
  to: { day: to, slot: 4 },
  hoursH: 30,
});
const functions: PhaseWork['functions'] = [
  { function: 'depth', hard: false, ways: [{ by: [], from: [], until: ['take-out:radio', 'label', 'paint'] }] },
  { function: 'horn', hard: false, ways: [{ by: [], from: [], until: ['survey'] }] },
];
const dark = (...times: Dark[]) => toldOf('dark-for-days', { order: orderOf(times), functions });

test('a function dark for days is told by the job that began it, its days, and what is at hand', () => {
  const said = (about: string, from: string, to: string) =>
    `fault ${about}: Depth is dark from ${from} to ${to}: 4 days, 30 hours while she must be able to move. At hand meanwhile: a lead line and the chart, kept where a hand finds them in the dark. [4 days / 3] Leave the old one in until the new one is on, or take the day out that you settled for it; else she stays at the berth.`;
  expect(dark(darkFrom(4, 2, 8))).toEqual([said('take-out:radio', '2027-03-05', '2027-03-09')]);
  expect(dark(darkFrom(4, 2, 7))).toEqual([]);
  expect(dark(darkFrom(8, 0, 12))).toEqual([said('', '2027-03-09', 'day 13')]);
  expect(dark(darkFrom(0, 0, 4), darkFrom(5, 0, 9))).toHaveLength(2);
  expect(toldOf('dark-for-days', { functions })).toEqual([]);
});

const heading = (first: Partial<Job>, line: Partial<Job>, why: Job['after'][number]['why'] = 'calibrated-first') => {
  const of = (id: string) =>
    waiting(`sea-trial:${id}`, { first: 'sea-trial:heading', why }, { kind: 'sea-trial', ...line });
  return toldOf('heading-line-too-early', {
    jobs: [aJob('sea-trial:heading', { kind: 'sea-trial', ...first }), of('radar'), of('pilot')],
  });
};

test('what leans on the heading is told, each trial, by its days or as left out', () => {
  const said = (trial: string, words: string) =>
    `fault gnss: The heading sensor is calibrated by the sea trial (heading), and the sea trial (${trial}) ${words}: it is to be done again. [ / ] Swing the heading sensor and align it first, then set the heading line of the radar and all else that leans on it.`;
  const early = 'is settled for 2027-03-03, before 2027-03-04';
  const line = { about: ['gnss'], day: '2027-03-03' };
  expect(heading({ day: '2027-03-04' }, line)).toEqual([said('pilot', early), said('radar', early)]);
  const out = 'is done though it is left out';
  expect(heading({ day: '2027-03-04', leftOut: 'So.' }, line)).toEqual([said('pilot', out), said('radar', out)]);
});

test('a trial that waits for another reason, or is left out itself, leans on nothing', () => {
  expect(heading({ day: '2027-03-04' }, { day: '2027-03-03' }, 'person')).toEqual([]);
  expect(heading({ leftOut: 'So.' }, { leftOut: 'So.' })).toEqual([]);
  expect(heading({ day: '2027-03-04' }, {})).toEqual([]);
  expect(heading({}, { day: '2027-03-03' })).toEqual([]);
  const alone = waiting('sea-trial:radar', { first: 'sea-trial:gone', why: 'calibrated-first' }, { day: '2027-03-03' });
  expect(toldOf('heading-line-too-early', { jobs: [alone] })).toEqual([]);
});

const cured = (first: Partial<Job>, last: Partial<Job>, why: Job['after'][number]['why'] = 'cured-first') => {
  const seal = aJob('seal:locker-stern', { kind: 'seal', about: ['locker-stern'], ...first });
  const after = [{ job: seal.id, why, waitH: 48 }];
  return toldOf('plugged-before-cured', {
    jobs: [
      seal,
      ...['gnss', 'radio'].map((id) =>
        aJob(`connect:${id}`, { kind: 'connect', about: ['gnss', 'nav'], after, ...last }),
      ),
    ],
  });
};

test('what is plugged in before its sealant cured is told by how many days lie between', () => {
  const said = (unit: string, when: string, measured: string) =>
    `fault gnss locker-stern: After sealing way locker-stern the sealant cures for some 48 hours; connecting ${unit} ${when}. Water comes in on the first wet night. [${measured} / 48] Leave the days open, or put the second one later by as long as the tube says.`;
  const both = (when: string, measured: string) => [
    said('GNSS on the stern rail', when, measured),
    said('Old radio', when, measured),
  ];
  const settled = (day: string) => cured({ day: '2027-03-03' }, { day });
  expect(settled('2027-03-05')).toEqual([]);
  expect(settled('2027-03-04')).toEqual(both('is settled for 2027-03-04, 1 day after 2027-03-03', '24 h'));
  expect(settled('2027-03-03')).toEqual(both('is settled for 2027-03-03, the same day', '0 h'));
  expect(settled('2027-03-02')).toEqual(both('is settled for 2027-03-02, 1 day before 2027-03-03', '-24 h'));
  expect(settled('2027-03-01')).toEqual(both('is settled for 2027-03-01, 2 days before 2027-03-03', '-48 h'));
  const out = both('waits for it, and it is left out', '');
  expect(cured({ leftOut: 'So.' }, { day: '2027-03-04' })).toEqual(out);
  expect(cured({ leftOut: 'So.' }, {})).toEqual(out);
  expect(cured({ leftOut: 'So.', day: '2027-03-01' }, { day: '2027-03-09' })[0]).toContain('left out. Water');
});

test('what waits for something else, is left out itself, or has no day is none', () => {
  expect(cured({ day: '2027-03-03' }, { day: '2027-03-03' }, 'same-hole')).toEqual([]);
  expect(cured({ leftOut: 'So.' }, { leftOut: 'So.' })).toEqual([]);
  expect(cured({ day: '2027-03-03' }, {})).toEqual([]);
});

const paper = aJob('paper:ship-number', { kind: 'paper', about: ['ship-number'] });
const late = (
  own: Partial<Job>,
  { before = [], ...phase }: Partial<PhaseWork> & { before?: Job[] } = {},
  work?: Work,
) => {
  const jobs = [aJob('survey', { day: '2027-03-09' }), ...before, aJob('power-up:radio', { kind: 'power-up', ...own })];
  return toldOf('papers-too-late', { jobs, ...phase }, work).map(
    (one) => one.match(/(fault .* come later: .*)\. They cannot be set up without\. \[ \/ \] Ask for the papers/)?.[1],
  );
};
const said = (day: string, list: string) => [
  `fault power-up:radio: The radios are to be on by ${day}, and their papers come later: ${list}`,
];

test('papers asked for that come after the day are told, each with its day; parts and papers without a day are none', () => {
  const on = (id: string, day?: string, what: 'paper' | 'item' = 'paper') => ({ what, id, ...(day && { on: day }) });
  const waitsFor = [
    on('ship-number', '2027-03-05'),
    on('ship-radio-licence', '2027-03-06'),
    on('harbour-leave', '2027-03-07'),
    on('inland-identification'),
    on('radio', '2027-03-07', 'item'),
  ];
  expect(late({ day: '2027-03-05', waitsFor })).toEqual(
    said('2027-03-05', 'ship radio licence (there on 2027-03-06), harbour-leave (there on 2027-03-07)'),
  );
});

test('a paper still to ask for is there so long after its own day, or after the first day of work', () => {
  const after = [{ job: paper.id, why: 'papers-first' as const, waitH: 25 }];
  const number = (there: string) => said('2027-03-02', `ship’s number (MMSI) (there on ${there})`);
  const day = '2027-03-02';
  expect(late({ day, after }, { before: [paper] })).toEqual(number('2027-03-03'));
  expect(late({ day, after }, { before: [{ ...paper, day: '2027-03-04' }] })).toEqual(number('2027-03-06'));
  expect(late({ day: '2027-03-03', after }, { before: [paper] })).toEqual([]);
  expect(late({ day, after }, { before: [{ ...paper, leftOut: 'She has it.' }] })).toEqual([]);
  expect(late({ day, after }, { before: [paper], days: [] })).toEqual([]);
  expect(late({ day, after })).toEqual([]);
  expect(late({ day, after: [{ job: paper.id, why: 'person', waitH: 25 }] }, { before: [paper] })).toEqual([]);
});

test('only radios that are to be on by a day are looked at', () => {
  const waitsFor = [{ what: 'paper' as const, id: 'ship-number', on: '2027-03-06' }];
  const work: Work = { doneBy: '2027-03-05' };
  expect(late({ waitsFor }, {}, work)).toEqual(said('2027-03-05', 'ship’s number (MMSI) (there on 2027-03-06)'));
  expect(late({ waitsFor })).toEqual([]);
  expect(late({ waitsFor, leftOut: 'So.' }, {}, work)).toEqual([]);
  expect(late({ waitsFor, kind: 'connect' }, {}, work)).toEqual([]);
});

test('days the wrong way round are none of a job left out, of what leaves, or where nothing links them', () => {
  const turned = (first: Partial<Job>, between = 'own:a') =>
    toldOf('pinned-out-of-turn', {
      jobs: [
        aJob('own:a', { name: 'first', day: '2027-03-05', ...first }),
        aJob('own:c', { name: 'last', day: '2027-03-04', after: afterJobs(between) }),
      ],
    });
  expect(turned({})).toEqual([
    'fault own:a own:c: First comes before last, and is settled for 2027-03-05, after 2027-03-04. [ / ] Let one of the two days go.',
  ]);
  expect(turned({ leftOut: 'So.' })).toEqual([]);
  expect(turned({ kind: 'leaving' })).toEqual([]);
  expect(turned({}, 'own:gone')).toEqual([]);
});
