import { byCodeUnit } from '../../boat/ids.ts';
import { type EssentialFunction, essentialFunctions, suppliedFunctions } from '../../facts/essential-functions.ts';
import type { Job, Watched } from '../../work-shape.ts';
import { type JobsInput, jobId, type PhaseFrame, phaseFrames } from './job-frame.ts';
import { hardFunctions, interruptsOfFunction } from './panel-jobs.ts';
import { pathsOf } from './paths-of-functions.ts';
import { cutBy, waysOfPath } from './way-of-path.ts';

type Way = Watched['ways'][number];
type JobsById = ReadonlyMap<string, Job>;

const isSupplied = (one: EssentialFunction): boolean => suppliedFunctions.some((other) => other === one);

/** What a circuit or bank gives: cut by every job that takes its supply away, and by a feed of its own meanwhile. */
const suppliedWays = (frame: PhaseFrame, wanted: EssentialFunction, byId: JobsById): Way[] => {
  const said = frame.index.boat.work?.essentials?.find((one) => one.function === wanted);
  const cuts = interruptsOfFunction(frame, wanted).filter((id) => byId.has(id) && byId.get(id)?.leftOut === undefined);
  const ways = cutBy({ by: [...(said?.on ?? [])], from: [], until: [] }, cuts);
  const feed = jobId('temporary-feed', '', frame.phase);
  const isFed = byId.get(feed)?.about.includes(wanted) === true;
  if (!isFed) return ways;
  return [...ways, { by: [feed], from: [feed], until: [jobId('take-temporary-feed-out', '', frame.phase)] }];
};

const key = (ids: readonly string[]): string => [...ids].sort(byCodeUnit).join(' ');
const isWithin = (some: readonly string[], others: readonly string[]): boolean =>
  some.every((id) => others.includes(id));

/** Ways without those that hold only while another of them holds too. */
const withoutIdle = (ways: readonly Way[]): Way[] => {
  const unique = [...new Map(ways.map((way) => [`${key(way.from)} < ${key(way.until)}`, way])).values()];
  return unique.filter(
    (way) =>
      !unique.some((other) => other !== way && isWithin(other.from, way.from) && isWithin(other.until, way.until)),
  );
};

/** Jobs of the person’s own that take a function away: before each and after it, in whatever order they come. */
const cutByOwn = (ways: readonly Way[], wanted: EssentialFunction, jobs: readonly Job[]): Way[] => {
  const own = jobs.filter(
    ({ kind, takes, leftOut }) => kind === 'own' && takes.includes(wanted) && leftOut === undefined,
  );
  return own.reduce<readonly Way[]>((all, { id }) => all.flatMap((way) => cutBy(way, [id])), ways) as Way[];
};

const functionOf = (frame: PhaseFrame, wanted: EssentialFunction, jobs: readonly Job[], byId: JobsById): Watched[] => {
  const { work = {} } = frame.index.boat;
  const said = work.essentials?.find((one) => one.function === wanted);
  if (said?.none === true || (wanted === 'ais' && work.aisWanted === false)) return [];
  const ways = isSupplied(wanted)
    ? suppliedWays(frame, wanted, byId)
    : pathsOf(frame, wanted).flatMap((path) => waysOfPath(frame, path, byId));
  if (ways.length === 0) return [];
  return [
    {
      function: wanted,
      hard: hardFunctions.some((hard) => hard === wanted),
      ways: cutByOwn(withoutIdle(ways), wanted, jobs).sort(
        (one, other) => byCodeUnit(key(one.from), key(other.from)) || byCodeUnit(key(one.until), key(other.until)),
      ),
      ...(isSupplied(wanted) && said === undefined ? { unknown: true as const } : {}),
    },
  ];
};

/**
 * The essential functions of each phase with the ways each is had by: from the end of what makes a way until what breaks it
 * begins. Jobs that take supply off follow one another, so a way holds before, between and after them. Pure.
 */
export const watchedOf = ({
  jobs,
  ...input
}: JobsInput & { readonly jobs: readonly Job[] }): ReadonlyMap<number, Watched[]> =>
  new Map(
    phaseFrames(input).map((frame) => {
      const own = jobs.filter(({ phase }) => phase === frame.phase);
      const byId = new Map(own.map((job) => [job.id, job]));
      return [frame.phase, essentialFunctions.flatMap((one) => functionOf(frame, one, own, byId))];
    }),
  );
