import { byCodeUnit, splitDotted } from '../../boat/ids.ts';
import { listeningFigures } from '../../facts/listening-figures.ts';
import type { ReadingId } from '../../facts/reading-ids.ts';
import type { Plan } from '../../plan-shape.ts';
import type { LiveReading, LiveSnapshot } from './live-snapshot.ts';

/** A unit that stands by for a reading. */
export interface StandsBy {
  readonly unit: string;
  /** it says the reading on a bus, where it can be heard */
  readonly onBus: boolean;
}

/** One reading that must go on coming while its first source is out. */
export interface PulledReading {
  readonly reading: ReadingId;
  /** who stands by for it, the best first */
  readonly backups: readonly StandsBy[];
  /** screens at which it must still be seen */
  readonly at: readonly string[];
}

/** One source that is pulled once, as the tests of the plan have it. */
export interface PullTest {
  /** id of the test in the plan */
  readonly test: string;
  readonly unit: string;
  readonly readings: readonly PulledReading[];
}

const unitOf = (port: string): string => splitDotted(port).kit;

/** The sources that are pulled once while the bus is listened to: of each its readings, and who stands by for them. */
export const pullTestsOf = ({ tests, sources, joins }: Pick<Plan, 'tests' | 'sources' | 'joins'>): PullTest[] => {
  const onBus = new Set(
    joins.flatMap(({ kind, members }) => (kind === 'nmea2000' ? members.map(({ kit, port }) => `${kit}.${port}`) : [])),
  );
  return tests.flatMap(({ id, test, about: [unit] }) => {
    if (test !== 'pulled' || unit === undefined) return [];
    const mine = sources.filter(({ primary, backups }) => unitOf(primary.from) === unit && backups.length > 0);
    const readings = [...new Set(mine.map(({ reading }) => reading))].sort(byCodeUnit).map((reading) => {
      const entries = mine.filter((one) => one.reading === reading);
      const ports = entries.flatMap((one) => one.backups.map(({ from }) => from));
      const units = [...new Set(ports.map(unitOf))].filter((backup) => backup !== unit);
      return {
        reading,
        backups: units.map((backup) => ({
          unit: backup,
          onBus: ports.some((port) => unitOf(port) === backup && onBus.has(port)),
        })),
        at: [...new Set(entries.map(({ at }) => at))].sort(byCodeUnit),
      };
    });
    return readings.length === 0 ? [] : [{ test: id, unit, readings }];
  });
};

/** What became of one reading while its first source is out. */
export interface TakenOver {
  readonly reading: ReadingId;
  readonly at: readonly string[];
  /** the unit it comes from now; absent while it comes from none */
  readonly by?: string;
  readonly says?: string;
  /** who stands by says it on no wire that is listened to: a person must look at the screens */
  readonly unheard?: readonly string[];
}

/** How a test of one pulled source stands. */
export type PullState =
  /** its unit does not speak, so pulling it shows nothing */
  | { readonly kind: 'not speaking' }
  | { readonly kind: 'pull it now' }
  /** it is out; `leftMs` until a reading that has not been taken over counts as lost */
  | { readonly kind: 'out'; readonly leftMs: number; readonly taken: readonly TakenOver[] }
  | { readonly kind: 'put it back'; readonly taken: readonly TakenOver[] }
  | { readonly kind: 'over'; readonly taken: readonly TakenOver[]; readonly right: boolean };

/** Follows one test from snapshot to snapshot. */
export interface PullWatch {
  step(snapshot: LiveSnapshot): PullState;
}

const takeoverMs = listeningFigures.takeoverMs.value;

const isFresh = ({ empty, silent }: LiveReading): boolean => empty !== true && silent !== true;

/** Who gives a reading now: one that stands by, before anybody else. */
const giver = (snapshot: LiveSnapshot, { reading, backups }: PulledReading, out: string): LiveReading | undefined => {
  const fresh = snapshot.readings.filter((one) => one.reading === reading && one.unit !== out && isFresh(one));
  const rank = ({ unit }: LiveReading): number => {
    const at = backups.findIndex((backup) => backup.unit === unit);
    return at < 0 ? backups.length : at;
  };
  return fresh.sort((a, b) => rank(a) - rank(b) || a.id - b.id)[0];
};

/** Whether none of those that stand by can be heard where one listens. */
const cannotBeHeard = (snapshot: LiveSnapshot, { reading, backups }: PulledReading): boolean =>
  !backups.some(
    ({ unit, onBus }) =>
      (onBus && snapshot.units.some((one) => one.unit === unit)) ||
      snapshot.readings.some((one) => one.reading === reading && one.unit === unit),
  );

const takenIn = (snapshot: LiveSnapshot, { unit, readings }: PullTest): TakenOver[] =>
  readings.map((pulled) => {
    const found = giver(snapshot, pulled, unit);
    return {
      reading: pulled.reading,
      at: pulled.at,
      ...(found?.unit === undefined ? {} : { by: found.unit }),
      ...(found?.says === undefined ? {} : { says: found.says }),
      ...(found === undefined && cannotBeHeard(snapshot, pulled)
        ? { unheard: pulled.backups.map((backup) => backup.unit) }
        : {}),
    };
  });

/** Nothing speaks against it: it comes from another, or cannot be heard from here. */
const isTaken = ({ by, unheard }: TakenOver): boolean => by !== undefined || unheard !== undefined;

/**
 * Starts watching for one source to be pulled: it must fall silent, each of its readings must come from one that stands by
 * within ten seconds, and then it must speak again.
 */
export const startPullWatch = (test: PullTest): PullWatch => {
  let outMs: number | undefined;
  let seen: readonly TakenOver[] | undefined;
  return {
    step(snapshot) {
      const own = snapshot.units.find(({ unit }) => unit === test.unit);
      if (own === undefined || (own.state !== 'speaking' && own.state !== 'silent')) return { kind: 'not speaking' };
      const isOut = own.state === 'silent';
      if (outMs === undefined) {
        if (!isOut) return { kind: 'pull it now' };
        outMs = snapshot.atMs;
      }
      if (seen === undefined) {
        const taken = takenIn(snapshot, test);
        const leftMs = Math.max(0, takeoverMs - (snapshot.atMs - outMs));
        if (taken.every(isTaken) || leftMs === 0 || !isOut) seen = taken;
        else return { kind: 'out', leftMs, taken };
      }
      if (isOut) return { kind: 'put it back', taken: seen };
      return { kind: 'over', taken: seen, right: seen.every(isTaken) };
    },
  };
};
