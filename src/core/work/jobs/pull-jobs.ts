import { jobWaits } from '../../facts/job-figures.ts';
import { stepsOfJobs } from '../../facts/job-steps.ts';
import { draftJob, type JobDraft, waits } from './job-draft.ts';
import { jobId, type PhaseFrame } from './job-frame.ts';
import { isSealed, linesThrough, type PullGroup, unitsOfCable } from './pull-groups.ts';
import { aloftOf } from './survey-jobs.ts';

/** Take-outs that come before a pull, since the old cable must be drawn out first. */
const oldOut = (frame: PhaseFrame, { oldFirst }: PullGroup): string[] => {
  const gone = new Set(frame.goes.map(({ id }) => id));
  return oldFirst
    .flatMap((cable) => unitsOfCable(frame, cable))
    .filter((unit) => gone.has(unit))
    .map((unit) => jobId('take-out', unit, frame.phase));
};

/** Whether a way leads through the open: both its ends in the weather. */
const isOutside = ({ index }: PhaseFrame, ways: readonly string[]): boolean =>
  ways.some((way) => index.ways.get(way)?.ends.every((place) => index.places.get(place)?.exposure === 'weather'));

const pullSteps = (kind: 'pull' | 'mast-pull', { oldFirst }: PullGroup): readonly string[] => {
  const usual = stepsOfJobs.byKind[kind];
  if (oldFirst.length === 0) return usual;
  return ['draw-the-old-cable-first', ...usual.filter((step) => step !== 'messenger-through')];
};

const pullJob = (frame: PhaseFrame, group: PullGroup): JobDraft => {
  const { index, phase } = frame;
  const kind = group.mast ? 'mast-pull' : 'pull';
  const opened = group.ways.filter((way) => waysOpened(frame).includes(way));
  const name = group.job.split(':')[1] ?? '';
  const place = group.mast ? name : index.ways.get(group.ways[0] ?? '')?.ends[0];
  return {
    ...draftJob(frame, name, {
      kind,
      about: [...group.ways, ...group.lines],
      ...(place === undefined || !index.places.has(place) ? {} : { place }),
      after: [
        ...waits([jobId('survey', '', phase)], 'label-first'),
        ...waits(
          opened.map((way) => jobId('open-way', way, phase)),
          'way-open',
        ),
        ...waits(oldOut(frame, group), 'bore-full'),
        ...(group.mast && frame.mastDown ? waits([jobId('mast-down', '', phase)], 'in-reach') : []),
      ],
      outside: isOutside(frame, group.ways),
      ...aloftOf(frame, group.mast),
    }),
    steps: pullSteps(kind, group),
  };
};

/** Ways opened, or bored wider, for the lines of a phase. */
const waysOpened = ({ pieces }: PhaseFrame): string[] => [
  ...new Set(
    pieces.flatMap(({ task, of }) => ((task === 'open-way' || task === 'widen-hole') && of !== undefined ? [of] : [])),
  ),
];

/** Ways opened, lines pulled a way at a time, and what is sealed once they are through. */
export const pullJobs = (frame: PhaseFrame, groups: readonly PullGroup[]): JobDraft[] => [
  ...waysOpened(frame).map((way) =>
    draftJob(frame, way, {
      kind: 'open-way',
      about: [way],
      ...placeOfWay(frame, way),
      after: waits([jobId('survey', '', frame.phase)], 'label-first'),
    }),
  ),
  ...groups.map((group) => pullJob(frame, group)),
  ...sealJobs(frame, groups),
];

const placeOfWay = ({ index }: PhaseFrame, way: string): { place?: string } => {
  const place = index.ways.get(way)?.ends[0];
  return place === undefined ? {} : { place };
};

const sealJobs = (frame: PhaseFrame, groups: readonly PullGroup[]): JobDraft[] =>
  [...frame.index.ways.values()]
    .filter((way) => isSealed(way) && linesThrough(frame.lines, way.id).length > 0)
    .map((way) => {
      const outer = way.ends.find((place) => frame.index.places.get(place)?.exposure === 'weather') ?? way.ends[0];
      return draftJob(frame, way.id, {
        kind: 'seal',
        about: [way.id, ...linesThrough(frame.lines, way.id)],
        place: outer,
        after: waits(
          groups.filter(({ ways }) => ways.includes(way.id)).map(({ job }) => job),
          'cabled-first',
        ),
        waitH: jobWaits.glandCure.value,
      });
    });
