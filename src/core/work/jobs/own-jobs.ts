import type { OwnJob } from '../../boat/work.ts';
import { draftJob, type JobDraft, waits } from './job-draft.ts';
import type { PhaseFrame } from './job-frame.ts';

/** The name of a job of the person’s own. */
export const ownJobId = ({ id }: Pick<OwnJob, 'id'>): string => `own:${id}`;

/** Jobs of the person’s own in a phase. */
export const ownJobs = (frame: PhaseFrame): JobDraft[] =>
  (frame.index.boat.work?.own ?? [])
    .filter(({ phase = 1 }) => phase === frame.phase)
    .map((own) => ({
      ...draftJob(frame, own.id, {
        kind: 'own',
        after: waits(own.after ?? [], 'person'),
        outside: own.outside === true,
        ...(own.place === undefined ? {} : { place: own.place }),
        ...(own.people === undefined ? {} : { people: own.people }),
        ...(own.takes === undefined ? {} : { takes: own.takes }),
        ...(own.state !== undefined || own.throughHull === true ? { state: own.state ?? 'ashore' } : {}),
      }),
      id: ownJobId(own),
    }));
