import type { Job, JobStart, PhaseWork, PlanWork } from '../work-shape.ts';
import { aJob as anyJob } from './some-jobs.test-helper.ts';

/** A job that takes something out in an hour, of what is told otherwise. */
export const aJob = (id: string, over: Partial<Job> = {}): Job => anyJob(id, { kind: 'take-out', ...over });

/** When a job is done by whom, all on one day. */
export const aStart = (
  job: string,
  [day, slot, slots]: readonly [number, number, number],
  hands: string[],
): JobStart => ({
  job,
  day,
  slot,
  lastDay: day,
  lastSlot: slot + slots,
  hands,
});

const day = (at: number, over: Partial<PhaseWork['days'][number]> = {}): PhaseWork['days'][number] => ({
  day: at,
  date: `2027-04-${String(5 + at).padStart(2, '0')}`,
  hands: ['mate', 'owner'],
  afloat: true,
  mast: 'up',
  foul: false,
  moves: true,
  left: false,
  ...over,
});

/** Work of one phase: five days, two people, nine jobs, the depth dark over a night and the pump once for an hour. */
export const aPhase = (over: Partial<PhaseWork> = {}): PhaseWork => ({
  phase: 1,
  perDay: 16,
  from: 18,
  hands: [
    { id: 'mate', name: 'the mate', can: [], pace: 1.5 },
    { id: 'owner', name: 'the owner', can: ['aloft', 'electrics'], pace: 1 },
  ],
  days: [day(0), day(1), day(2, { foul: true }), day(3, { hands: [] }), day(4, { afloat: false })],
  taken: [{ what: 'ashore', from: 4, to: 4 }],
  jobs: [
    aJob('survey', { kind: 'survey', slots: 6, hoursH: { least: 2, most: 4 } }),
    aJob('paper:licence', { kind: 'paper', slots: 0, waitH: 24 }),
    aJob('label', { kind: 'label', slots: 3, after: [{ job: 'survey', why: 'label-first' }] }),
    aJob('take-out:compass', { about: ['compass'], place: 'helm', slots: 2, takes: ['heading'] }),
    aJob('pull:drop', { kind: 'pull', about: ['drop:bus/compass', 'locker-helm'], slots: 4 }),
    aJob('mount:display', { kind: 'mount', about: ['display'], place: 'helm', slots: 8, people: 2 }),
    aJob('panel:main-panel', { kind: 'panel', about: ['main-panel'], slots: 2, takes: ['bilge-pump'] }),
    aJob('seal:transducer', { kind: 'underwater', slots: 6, state: 'ashore', waitH: 24 }),
    aJob('as-built', { kind: 'as-built', slots: 4, leftOut: 'Somebody else draws it.' }),
  ],
  functions: [
    { function: 'bilge-pump', hard: true, ways: [{ by: ['main-panel'], from: [], until: ['panel:main-panel'] }] },
    { function: 'depth', hard: false, ways: [] },
    { function: 'vhf', hard: false, ways: [{ by: ['radio'], from: [], until: [] }] },
  ],
  order: {
    hash: 'h',
    starts: [
      aStart('survey', [0, 0, 6], ['owner']),
      aStart('paper:licence', [0, 0, 0], []),
      aStart('label', [0, 6, 3], ['mate']),
      aStart('take-out:compass', [0, 9, 2], ['owner']),
      aStart('pull:drop', [1, 0, 4], ['owner']),
      aStart('mount:display', [1, 4, 8], ['mate', 'owner']),
      aStart('panel:main-panel', [2, 0, 2], ['owner']),
      aStart('seal:transducer', [4, 0, 6], ['owner']),
    ],
    dark: [
      { function: 'depth', from: { day: 0, slot: 9 }, to: { day: 1, slot: 4 }, hoursH: 21.5 },
      { function: 'bilge-pump', from: { day: 2, slot: 0 }, to: { day: 2, slot: 2 }, hoursH: 1 },
    ],
    cost: { darkH: 22.5, lastDay: 4, ascents: 0 },
    bound: { darkH: 22.5, lastDay: 4, ascents: 0 },
    plain: { darkH: 96, lastDay: 6, ascents: 0 },
    status: 'proven',
    work: 120,
  },
  orderBy: [{ item: 'micro-tee', job: 'pull:drop', wantedOn: 1, leadDays: 5, day: -4, on: '2027-04-01' }],
  ...over,
});

/** The work of a boat whose compass leaves after the sea trial. */
export const aWork = (over: Partial<PhaseWork> = {}): PlanWork => ({
  phases: [aPhase(over)],
  leaving: [{ unit: 'compass', cables: [], steps: ['wipe'], byMaker: [], serial: false, photo: true, after: 'survey' }],
});
