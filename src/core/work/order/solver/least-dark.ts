import { counted } from './darkness.ts';
import { daySlots, type Ground, type GroundFunction } from './ground.ts';
import type { Heads } from './heads.ts';

/**
 * What a function is dark at least, in half hours that count, whoever else wants the hands: from the beginning of the job that
 * ends the way it has, at its best moment, to the end of all that must come between and give the next.
 */
export const leastDark = (
  ground: Ground,
  heads: Heads,
  order: readonly number[],
  reach: readonly Uint8Array[],
  one: GroundFunction,
): number => {
  const held = one.ways.filter(({ from }) => from.length === 0);
  const [way] = held;
  if (held.length !== 1 || way === undefined || way.until.length === 0) return 0;
  const next = one.ways.filter((other) => other !== way);
  let least = Number.POSITIVE_INFINITY;
  for (const end of way.until) {
    const wanted = next.map(({ from }) => from.filter((give) => give === end || reach[end]?.[give] === 1));
    if (wanted.some((gives) => gives.length === 0)) return 0;
    least = Math.min(least, bestMoment({ ground, heads, order, reach, one, end, wanted }));
    if (least === 0) return 0;
  }
  return Number.isFinite(least) ? least : 0;
};

const bestMoment = ({
  ground,
  heads,
  order,
  reach,
  one,
  end,
  wanted,
}: {
  readonly ground: Ground;
  readonly heads: Heads;
  readonly order: readonly number[];
  readonly reach: readonly Uint8Array[];
  readonly one: GroundFunction;
  readonly end: number;
  readonly wanted: readonly (readonly number[])[];
}): number => {
  const between = order.filter(
    (job) =>
      job !== end &&
      reach[end]?.[job] === 1 &&
      wanted.some((gives) => gives.some((give) => give === job || reach[job]?.[give] === 1)),
  );
  const isBetween = new Set([end, ...between]);
  const links = between.map((job) => ({
    job,
    preds: (ground.jobs[job]?.preds ?? []).filter((link) => isBetween.has(link.job)),
  }));
  const ends = new Float64Array(ground.jobs.length);
  const horizon = ground.days * daySlots;
  let least = Number.POSITIVE_INFINITY;
  for (let begin = heads.beginFrom(end, 0); begin < horizon && least > 0; begin = heads.beginFrom(end, begin + 1)) {
    ends[end] = heads.endOf(end, begin);
    for (const { job, preds } of links) {
      let ready = 0;
      for (const { job: before, wait } of preds) ready = Math.max(ready, (ends[before] ?? 0) + wait);
      ends[job] = heads.endOf(job, heads.beginFrom(job, ready));
    }
    const lit = Math.min(...wanted.map((gives) => Math.max(...gives.map((give) => ends[give] ?? 0))));
    least = Math.min(least, counted(one, begin, Math.min(lit, horizon)));
  }
  return least;
};
