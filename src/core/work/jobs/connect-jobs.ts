import { byCodeUnit } from '../../boat/ids.ts';
import { keptFor } from '../../boat/kept-for.ts';
import { jobWaits } from '../../facts/job-figures.ts';
import type { LineEntry } from '../../plan-shape.ts';
import { draftJob, type JobDraft, waits } from './job-draft.ts';
import { endsOf, jobId, type PhaseFrame } from './job-frame.ts';
import { mountKind } from './mount-jobs.ts';
import { isSealed, type PullGroup } from './pull-groups.ts';
import { aloftOf } from './survey-jobs.ts';

/**
 * The unit with which another is connected: one that draws nothing and has a single line (an antenna, a transducer, a sender) is
 * plugged in together with what is at its other end.
 */
const partnerOf = (frame: PhaseFrame, unit: string): string | undefined => {
  if ((frame.index.sheetOf.get(unit)?.power ?? []).length > 0) return undefined;
  const lines = linesOfUnits(frame.plan).get(unit) ?? [];
  const [line] = lines;
  if (line === undefined || lines.length > 1 || line.kind === 'drop') return undefined;
  return endsOf(frame, line).find((end) => end !== unit && frame.index.kit.has(end));
};

const linesOfUnits = keptFor((plan: PhaseFrame['plan']): ReadonlyMap<string, readonly LineEntry[]> => {
  const found = new Map<string, LineEntry[]>();
  for (const line of plan.lines) {
    for (const end of [line.from, line.to]) {
      const unit = end.slice(end.lastIndexOf('/') + 1).split('.')[0] ?? end;
      found.set(unit, [...(found.get(unit) ?? []), line]);
    }
  }
  return found;
});

/** What is connected in a phase, and whatever is plugged in together with it. */
const connections = keptFor((frame: PhaseFrame): ReadonlyMap<string, readonly string[]> => {
  const all = touched(frame);
  const found = new Map<string, string[]>();
  for (const id of all) {
    const partner = frame.index.kit.has(id) ? partnerOf(frame, id) : undefined;
    const at = partner === undefined || partnerOf(frame, partner) !== undefined ? id : partner;
    found.set(at, [...(found.get(at) ?? []), ...(at === id ? [] : [id])]);
  }
  return found;
});

/** The unit or bus with which another is connected in a phase: itself, but for what is plugged in together with another. */
export const connectedWith = (frame: PhaseFrame, id: string): string => partners(frame).get(id) ?? id;

const partners = keptFor(
  (frame: PhaseFrame): ReadonlyMap<string, string> =>
    new Map([...connections(frame)].flatMap(([at, others]) => others.map((other): [string, string] => [other, at]))),
);

/** The job in which a unit or a bus of a phase is connected. */
export const connectJobOf = (frame: PhaseFrame, id: string): string =>
  jobId('connect', connectedWith(frame, id), frame.phase);

/** Units and buses that are connected in a phase, without those that come along with another. */
export const connectedFirst = (frame: PhaseFrame): string[] => [...connections(frame).keys()].sort(byCodeUnit);

/** Units and buses that are connected in a phase: what comes, and what stays and gets a new line. */
export const connected = keptFor((frame: PhaseFrame): string[] => touched(frame));

const touched = (frame: PhaseFrame): string[] => {
  const { index } = frame;
  const fresh = frame.lines
    .flatMap((line) => endsOf(frame, line))
    .filter((id) => index.kit.has(id) || index.buses.has(id));
  return [...new Set([...frame.comes.map(({ id }) => id), ...fresh])].sort(byCodeUnit);
};

/** The new lines of a phase that end at a unit or a bus. */
export const linesAt = (frame: PhaseFrame, id: string): LineEntry[] =>
  frame.lines.filter((line) => endsOf(frame, line).includes(id));

/** Sealed ways that the lines of a unit pass, whose seals cure before it is plugged in. */
const sealsBefore = ({ index, phase }: PhaseFrame, lines: readonly LineEntry[]): string[] =>
  [...new Set(lines.flatMap(({ ways }) => ways))]
    .filter((way) => {
      const found = index.ways.get(way);
      return found !== undefined && isSealed(found);
    })
    .map((way) => jobId('seal', way, phase));

/** Everything connected, a unit or a bus at a time, once it is fitted, its lines are through and what they pass has cured. */
export const connectJobs = (frame: PhaseFrame, groups: readonly PullGroup[]): JobDraft[] => {
  const { index, phase } = frame;
  return connectedFirst(frame).map((id) => {
    const together = connections(frame).get(id) ?? [];
    const lines = [id, ...together].flatMap((one) => linesAt(frame, one));
    const own = new Set(lines.map((line) => line.id));
    const unit = index.kit.get(id);
    const isAloft = unit !== undefined && index.places.get(unit.place)?.reach === 'aloft';
    const inMast = groups.some((group) => group.mast && group.lines.some((line) => own.has(line)));
    return draftJob(frame, id, {
      kind: 'connect',
      about: [id, ...together, ...[...own].sort(byCodeUnit)],
      ...(unit === undefined ? {} : { place: unit.place }),
      after: [
        ...waits(
          frame.comes
            .filter((one) => one.id === id || together.includes(one.id))
            .map((one) => jobId(mountKind(frame, one), one.id, phase)),
          'fixed-first',
        ),
        ...waits(
          groups.filter((group) => group.lines.some((line) => own.has(line))).map(({ job }) => job),
          'cabled-first',
        ),
        ...waits(sealsBefore(frame, lines), 'cured-first', jobWaits.glandCure.value),
        ...(frame.mastDown && isAloft ? waits([jobId('mast-down', '', phase)], 'in-reach') : []),
        ...(frame.mastDown && inMast && !isAloft ? waits([jobId('mast-up', '', phase)], 'in-reach') : []),
      ],
      ...aloftOf(frame, isAloft),
    });
  });
};
