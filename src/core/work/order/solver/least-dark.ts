import { counted } from './darkness.ts';
import { daySlots, type Ground, type GroundFunction } from './ground.ts';
import type { Heads } from './heads.ts';

/** What a bound on darkness is sought in. */
export interface DarkAsk {
  readonly ground: Ground;
  readonly heads: Heads;
  /** jobs, each behind all it waits for */
  readonly order: readonly number[];
  readonly reach: readonly Uint8Array[];
}

/** From the beginning of one job to the end of another no way of a function can hold, whatever the order. */
interface Gap {
  readonly end: number;
  readonly give: number;
  readonly dark: number;
}

/**
 * What each function is dark at least, in half hours that count, whoever else wants the hands. A gap runs from a job that ends a
 * way to one that gives the next, where every way either has ended by then or is given after it; at its best moment it is as dark
 * as its jobs in a row make it. Gaps that must follow one another add up, and the dearest row of them is the bound, or the work
 * in all gaps shared by all hands.
 */
export const leastDark = (ask: DarkAsk): number[] => {
  const known = new Map<string, number>();
  return ask.ground.functions.map((one) => {
    const key = one.counts.join('');
    const darkOf = (end: number, give: number): number => {
      const name = `${end} ${give} ${key}`;
      const found = known.get(name) ?? bestMoment(ask, one, end, give);
      known.set(name, found);
      return found;
    };
    const gaps = gapsOf(ask, one, darkOf);
    return Math.max(dearestRow(ask, gaps), workInTheDark(ask, one, gaps));
  });
};

/**
 * All jobs of all gaps are done in the dark, whichever follows which, and so many hands do no more than so much at once. A job
 * that could be done on a day that does not count is no part of it.
 */
const workInTheDark = ({ ground, reach }: DarkAsk, one: GroundFunction, gaps: readonly Gap[]): number => {
  const isOn = (job: number, other: number): boolean => job === other || reach[job]?.[other] === 1;
  let work = 0;
  for (const [number, job] of ground.jobs.entries()) {
    if (!gaps.some(({ end, give }) => isOn(end, number) && isOn(number, give))) continue;
    const isCounted = job.window.to.every((to, day) => to <= (job.window.from[day] ?? 0) || one.counts[day] === 1);
    if (isCounted && job.days === 0) work += job.slots * (job.handSets[0]?.length ?? 0);
  }
  return Math.ceil(work / Math.max(1, ground.hands));
};

const gapsOf = ({ reach }: DarkAsk, { ways }: GroundFunction, darkOf: (end: number, give: number) => number): Gap[] => {
  const isOn = (one: number, other: number): boolean => one === other || reach[one]?.[other] === 1;
  const ends = [...new Set(ways.flatMap(({ until }) => until))];
  const gives = [...new Set(ways.flatMap(({ from }) => from))];
  return ends.flatMap((end) => {
    const isOver = ways.map(({ until }) => until.some((other) => isOn(other, end)));
    return gives.flatMap((give): Gap[] => {
      if (!isOn(end, give)) return [];
      const isNone = ways.every(({ from }, n) => isOver[n] === true || from.some((other) => isOn(give, other)));
      return isNone ? [{ end, give, dark: darkOf(end, give) }] : [];
    });
  });
};

/** The most that gaps come to of which each begins after the one before it has ended. */
const dearestRow = ({ order, reach }: DarkAsk, gaps: readonly Gap[]): number => {
  const place = new Map(order.map((job, n) => [job, n]));
  const sorted = [...gaps].sort((a, b) => (place.get(a.end) ?? 0) - (place.get(b.end) ?? 0));
  const sums: number[] = [];
  for (const [n, gap] of sorted.entries()) {
    let before = 0;
    for (let other = 0; other < n; other += 1) {
      const give = sorted[other]?.give ?? -1;
      if (give !== gap.end && reach[give]?.[gap.end] === 1) before = Math.max(before, sums[other] ?? 0);
    }
    sums.push(before + gap.dark);
  }
  return Math.max(0, ...sums);
};

/** The least of a gap that counts, over all moments at which it might begin. */
const bestMoment = (
  { ground, heads, order, reach }: DarkAsk,
  one: GroundFunction,
  end: number,
  give: number,
): number => {
  const between = order.filter(
    (job) => job !== end && reach[end]?.[job] === 1 && (job === give || reach[job]?.[give] === 1),
  );
  const isBetween = new Set([end, ...between]);
  const links = between.map((job) => ({
    job,
    preds: (ground.jobs[job]?.preds ?? []).filter((link) => isBetween.has(link.job)),
  }));
  const ends = new Float64Array(ground.jobs.length);
  const horizon = ground.days * daySlots;
  let least = Number.POSITIVE_INFINITY;
  const inARow = rowOf(ground, end, links);
  for (let begin = heads.beginFrom(end, 0); begin < horizon; begin = heads.beginFrom(end, begin + 1)) {
    ends[end] = heads.endOf(end, begin);
    for (const { job, preds } of links) {
      let ready = 0;
      for (const { job: before, wait } of preds) ready = Math.max(ready, (ends[before] ?? 0) + wait);
      ends[job] = heads.endOf(job, heads.beginFrom(job, ready));
    }
    const lit = ends[give] ?? horizon;
    if (lit > horizon) break;
    const dark = counted(one, begin, lit);
    least = Math.min(least, dark);
    // With no night between it cannot be less, but on a day that does not count.
    if (least === 0 || (least === inARow && isAlwaysCounted(one))) break;
  }
  return Number.isFinite(least) ? least : 0;
};

const isAlwaysCounted = ({ counts, countsBefore }: GroundFunction): boolean =>
  countsBefore[counts.length] === counts.length;

/** How long a gap is with no night in it. */
const rowOf = (
  { jobs }: Ground,
  end: number,
  links: readonly {
    readonly job: number;
    readonly preds: readonly { readonly job: number; readonly wait: number }[];
  }[],
): number => {
  const ends = new Map([[end, jobs[end]?.slots ?? 0]]);
  let last = jobs[end]?.slots ?? 0;
  for (const { job, preds } of links) {
    const ready = Math.max(...preds.map((link) => (ends.get(link.job) ?? 0) + link.wait));
    last = ready + (jobs[job]?.slots ?? 0);
    ends.set(job, last);
  }
  return links.length === 0 ? (jobs[end]?.slots ?? 0) : last;
};
