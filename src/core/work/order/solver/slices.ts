import type { Ground, GroundFunction, GroundWay } from './ground.ts';
import { orderOf, reachOf } from './reach.ts';

/** How jobs are best kept together, to be dark for a short time. */
export interface Slices {
  /** jobs that are done at a stretch, by number; every job is in one, most alone */
  readonly groupOf: readonly number[];
  readonly groups: readonly (readonly number[])[];
  /** jobs that are better done before each job: the new way, where nothing forbids it, before the old one goes */
  readonly before: readonly (readonly number[])[];
}

const isAlways = ({ from, until }: GroundWay): boolean => from.length === 0 && until.length === 0;

const countsEver = ({ counts }: GroundFunction): boolean => counts.some((is) => is === 1);

/** Each way that ends, with those that may follow it: those that stay first. */
const changesOf = ({ ways }: GroundFunction): { ends: GroundWay; next: readonly GroundWay[] }[] =>
  ways.some(isAlways)
    ? []
    : ways
        .filter(({ until }) => until.length > 0)
        .map((ends) => ({
          ends,
          next: ways
            .filter((way) => way !== ends && way.from.length > 0)
            .sort((a, b) => a.until.length - b.until.length),
        }));

/** Finds what is better kept together or apart. Nothing of it is a must: an order may be sought with it and without. */
export const slicesOf = (ground: Ground): Slices => {
  const count = ground.jobs.length;
  const succs = ground.jobs.map(({ succs: own }) => own.map(({ job }) => job));
  const must = reachOf(succs);
  const before: number[][] = ground.jobs.map(() => []);
  if (must === undefined)
    return { groupOf: ground.jobs.map((_, n) => n), groups: ground.jobs.map((_, n) => [n]), before };
  const all = succs.map((list) => [...list]);
  let reach = must;
  const stretches: number[][] = [];
  const watched = ground.functions.filter(countsEver);
  // Many functions hang on the same supply: what is the same is looked at once.
  const unlike = new Map(watched.map((one) => [JSON.stringify(one.ways), one]));
  for (const { ends, next } of [...unlike.values()].flatMap(changesOf)) {
    const free = next.find(({ from }) =>
      from.every((give) => ends.until.every((end) => reach[end]?.[give] !== 1 && end !== give)),
    );
    if (free !== undefined) {
      for (const give of free.from) {
        for (const end of ends.until) {
          all[give]?.push(end);
          before[end]?.push(give);
        }
      }
      reach = reachOf(all) ?? reach;
      continue;
    }
    for (const end of ends.until) {
      const ways = next.map(({ from }) => stretchOf({ count, reach: must, end, gives: from }));
      const [shortest] = ways.filter((stretch) => stretch.length > 0).sort((one, other) => one.length - other.length);
      if (shortest !== undefined) stretches.push(shortest);
    }
  }
  return { ...groupsOf(all, stretches), before };
};

/** The jobs that must lie between the end of one way and the beginning of the next, both included. */
const stretchOf = ({
  count,
  reach,
  end,
  gives,
}: {
  readonly count: number;
  readonly reach: readonly Uint8Array[];
  readonly end: number;
  readonly gives: readonly number[];
}): number[] => {
  const numbers = Array.from({ length: count }, (_, n) => n);
  const isOn = (one: number, other: number): boolean => one === other || reach[one]?.[other] === 1;
  return numbers.filter((job) => isOn(end, job) && gives.some((give) => isOn(job, give)));
};

/** Joins what shares a job or waits for each other in turns, so that groups can be done one after another. */
const groupsOf = (
  succs: readonly (readonly number[])[],
  stretches: readonly (readonly number[])[],
): Pick<Slices, 'groupOf' | 'groups'> => {
  const root = succs.map((_, n) => n);
  const find = (job: number): number => {
    let at = job;
    while (root[at] !== at) at = root[at] ?? at;
    return at;
  };
  const join = (a: number, b: number): void => {
    root[Math.max(find(a), find(b))] = Math.min(find(a), find(b));
  };
  for (const stretch of stretches) for (const job of stretch) join(stretch[0] ?? job, job);
  // Groups that each wait for some job of the other are one: they reach each other.
  const next = succs.map(() => new Set<number>());
  for (const [job, list] of succs.entries()) {
    for (const other of list) if (find(other) !== find(job)) next[find(job)]?.add(find(other));
  }
  if (stretches.length > 0 && orderOf(next.map((own) => [...own])) === undefined) {
    const reach = reachThrough(next);
    for (const [one, own] of reach.entries())
      for (const other of own) if (reach[other]?.has(one) === true) join(one, other);
  }
  const groupOf = succs.map((_, job) => find(job));
  const groups: number[][] = succs.map(() => []);
  for (const [job, group] of groupOf.entries()) groups[group]?.push(job);
  return { groupOf, groups };
};

const reachThrough = (next: readonly ReadonlySet<number>[]): ReadonlySet<number>[] =>
  next.map((own) => {
    const seen = new Set<number>(own);
    const open = [...own];
    for (let at = open.pop(); at !== undefined; at = open.pop()) {
      for (const other of next[at] ?? []) {
        if (!seen.has(other)) {
          seen.add(other);
          open.push(other);
        }
      }
    }
    return seen;
  });
