import type { Kit } from '../../boat/boat-schema.ts';
import { keptFor } from '../../boat/kept-for.ts';
import { inHoles } from '../../quote/unit-work.ts';
import { draftJob, type JobDraft, waits } from './job-draft.ts';
import { jobId, kindOf, type PhaseFrame } from './job-frame.ts';
import { aloftOf } from './survey-jobs.ts';
import { isUnderwater } from './underwater.ts';

/** Places where panels are cut or plates screwed on in this phase. */
export const placesCut = keptFor((frame: PhaseFrame): string[] => [
  ...new Set(
    frame.pieces.flatMap(({ task, of }) => {
      if (task !== 'cover-plate' && task !== 'flush-mount') return [];
      const place = frame.index.kit.get(of ?? '')?.place;
      return place === undefined ? [] : [place];
    }),
  ),
]);

const cutJob = (frame: PhaseFrame, place: string): JobDraft => {
  const { goes, phase, plan } = frame;
  const old = goes.filter((unit) => unit.place === place).map(({ id }) => jobId('take-out', id, phase));
  return draftJob(frame, place, {
    kind: 'cut',
    about: [...plan.fits.filter((fit) => fit.place === place).map(({ opening }) => opening), place],
    place,
    after: waits(old, 'same-hole'),
  });
};

/** What kind of job fits a unit, by where it goes. */
export const mountKind = (frame: PhaseFrame, unit: Kit): 'mount' | 'mount-aloft' | 'underwater' => {
  if (isUnderwater(frame, unit)) return 'underwater';
  return frame.index.places.get(unit.place)?.reach === 'aloft' ? 'mount-aloft' : 'mount';
};

/** Units that go and make room for one that comes: of one kind of use at one place. */
const standsWhere = (frame: PhaseFrame, { id, place }: Kit): string[] =>
  frame.goes
    .filter(
      (old) => old.place === place && (inHoles.has(kindOf(frame, id)) || kindOf(frame, old.id) === kindOf(frame, id)),
    )
    .map((old) => jobId('take-out', old.id, frame.phase));

const mountJob = (frame: PhaseFrame, unit: Kit): JobDraft => {
  const { phase } = frame;
  const kind = mountKind(frame, unit);
  const isCut = placesCut(frame).includes(unit.place) && inHoles.has(kindOf(frame, unit.id));
  return draftJob(frame, unit.id, {
    kind,
    about: [unit.id],
    place: unit.place,
    after: [
      ...waits(standsWhere(frame, unit), 'same-hole'),
      ...(isCut ? waits([jobId('cut', unit.place, phase)], 'same-hole') : []),
      ...(kind === 'underwater' ? waits([jobId('haul-out', '', phase)], 'in-reach') : []),
      ...(kind === 'mount-aloft' && frame.mastDown ? waits([jobId('mast-down', '', phase)], 'in-reach') : []),
      ...(frame.isFirst ? waits([jobId('survey', '', phase)], 'label-first') : []),
    ],
    ...(kind === 'underwater' ? { state: 'ashore' as const, outside: true } : {}),
    ...(kind === 'mount-aloft' ? aloftOf(frame, true) : {}),
  });
};

/** Panels cut, and every unit that comes fitted where it goes. */
export const mountJobs = (frame: PhaseFrame): JobDraft[] => [
  ...placesCut(frame).map((place) => cutJob(frame, place)),
  ...frame.comes.map((unit) => mountJob(frame, unit)),
];
