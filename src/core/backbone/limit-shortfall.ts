import type { LayoutLimit } from '../facts/layout-limits.ts';
import { busFigures } from './bus-figures.ts';
import { withLooser, withoutLimits } from './clashing-limits.ts';
import type { Budget, Layout, Problem } from './problem.ts';
import { keptLayout } from './solve-layout.ts';

/** What a layout reaches of one limit, and what is allowed, in the limit's unit. */
export interface LimitFigure {
  readonly would: number;
  readonly allowed: number;
  readonly unit: 'm' | 'A' | 'V' | 'units';
}

/**
 * How far a layout that keeps the other limits goes beyond one. `at`: the unit it happens at as `kit.port`, or the places
 * where a tee stands or the trunk ends that may not. No figure where the limit is none.
 */
export interface LimitShortfall {
  readonly limit: LayoutLimit;
  readonly grade: Layout['grade'];
  readonly at: readonly string[];
  readonly figure?: LimitFigure;
}

type Measure = (problem: Problem, layout: Layout) => Omit<LimitShortfall, 'limit' | 'grade'>;

const metres = (would: number, limitMm: number): LimitFigure => ({ would, allowed: limitMm / 1000, unit: 'm' });

/** The greatest of some values, each with what it is of; the first of equals. */
const greatest = <Value extends { readonly size: number }>(values: readonly Value[]): Value | undefined =>
  values.reduce<Value | undefined>(
    (most, one) => (most !== undefined && most.size >= one.size ? most : one),
    undefined,
  );

const gradeOf = ({ grades }: Problem, { grade }: Layout): Problem['grades'][number] | undefined =>
  grades.find(({ id }) => id === grade);

const longestDrop: Measure = (problem, layout) => {
  const { drops } = busFigures(problem, layout).entry;
  const longest = greatest(drops.map(({ port, boughtM }) => ({ port, size: boughtM })));
  return {
    at: longest === undefined ? [] : [longest.port],
    figure: metres(longest?.size ?? 0, problem.limits.dropMm),
  };
};

/** Volts lost at the unit for which that is most of what it may lose, by the limit or by what it works down to. */
const lostVolts: Measure = (problem, layout) => {
  const { mv, lostMv } = problem.feed;
  const lost = new Map(busFigures(problem, layout).entry.volts.map(({ port, dropV }) => [port, dropV]));
  const worst = greatest(
    problem.devices.map(({ id, minMv }) => {
      const allowedMv = Math.min(lostMv?.fail ?? Number.POSITIVE_INFINITY, mv - minMv);
      const would = lost.get(id) ?? 0;
      return { id, would, allowed: allowedMv / 1000, size: would - allowedMv / 1000 };
    }),
  );
  return worst === undefined
    ? { at: [] }
    : { at: [worst.id], figure: { would: worst.would, allowed: worst.allowed, unit: 'V' } };
};

const placesThat = (
  problem: Problem,
  used: readonly string[],
  mayNot: (place: Problem['places'][number]) => boolean,
) => {
  const barred = new Set(problem.places.filter(mayNot).map(({ id }) => id));
  return { at: [...new Set(used)].filter((place) => barred.has(place)) };
};

const measures: Readonly<Record<LayoutLimit, Measure>> = {
  'device-count': ({ devices, limits }) => ({
    at: [],
    figure: { would: devices.length, allowed: limits.devices, unit: 'units' },
  }),
  'one-drop': longestDrop,
  'all-drops': (problem, layout) => ({
    at: [],
    figure: metres(busFigures(problem, layout).entry.dropsM, problem.limits.dropsMm),
  }),
  length: (problem, layout) => ({
    at: [],
    figure: metres(busFigures(problem, layout).entry.farthestM, gradeOf(problem, layout)?.failMm ?? 0),
  }),
  current: (problem, layout) => ({
    at: [],
    figure: {
      would: Math.max(0, ...busFigures(problem, layout).legs.map(({ amps }) => amps)),
      allowed: (gradeOf(problem, layout)?.maxMa ?? 0) / 1000,
      unit: 'A',
    },
  }),
  volts: lostVolts,
  'tee-places': (problem, { walk }) =>
    placesThat(
      problem,
      walk.flatMap(({ place, tees }) => (tees.length > 0 ? [place] : [])),
      ({ tees }) => !tees,
    ),
  'end-places': (problem, { walk }) =>
    placesThat(
      problem,
      [walk[0], walk.at(-1)].flatMap((step) => step?.place ?? []),
      ({ end }) => !end,
    ),
};

const timesOf = ({ would, allowed }: LimitFigure): number => (allowed > 0 ? would / allowed : Number.POSITIVE_INFINITY);

/** How often the room between what is allowed and what was reached is halved. */
const halvings = 4;

interface ShortfallAsk {
  readonly problem: Problem;
  readonly limit: LayoutLimit;
  readonly budget: Budget;
}

type Measured = (layout: Layout) => LimitShortfall;

/** What is allowed raised by halves towards the least with which there is a layout. */
const leastBeyond = (first: LimitShortfall, measured: Measured, { problem, limit, budget }: ShortfallAsk) => {
  let least = first;
  let tooFew = 1;
  for (let halving = 0; halving < halvings; halving += 1) {
    const most = least.figure === undefined ? tooFew : timesOf(least.figure);
    const times = (tooFew + most) / 2;
    if (!Number.isFinite(times)) break;
    const layout = keptLayout(withLooser(problem, { limit, times }), budget).layout;
    const found = layout === undefined ? undefined : measured(layout);
    if (found?.figure !== undefined && timesOf(found.figure) < most) least = found;
    else tooFew = times;
  }
  return least;
};

/** Of the places that are used though they may not be, no more than are needed. */
const fewestPlaces = (first: LimitShortfall, measured: Measured, { problem, limit, budget }: ShortfallAsk) => {
  let least = first;
  for (const place of first.at) {
    const used = new Set(least.at.filter((other) => other !== place));
    const places = problem.places.map((own) => (used.has(own.id) ? { ...own, ...freed(limit) } : own));
    const layout = used.size === least.at.length ? undefined : keptLayout({ ...problem, places }, budget).layout;
    if (layout !== undefined) least = measured(layout);
  }
  return least;
};

const freed = (limit: LayoutLimit): Partial<Problem['places'][number]> =>
  limit === 'tee-places' ? { tees: true } : { end: true };

/**
 * How far the layouts go beyond one limit of a clash that keep all the others, as little as was found. `clashes`: every
 * clash of the problem; limits of the other clashes are left out, for they cannot be kept in any case. Absent where no such
 * layout is found with the work given for each try.
 */
export const limitShortfall = ({
  clashes,
  ...ask
}: ShortfallAsk & { readonly clashes: readonly (readonly LayoutLimit[])[] }): LimitShortfall | undefined => {
  const { problem, limit, budget } = ask;
  const base = withoutLimits(problem, clashes.filter((clash) => !clash.includes(limit)).flat());
  const measured = (layout: Layout): LimitShortfall => ({
    limit,
    grade: layout.grade,
    ...measures[limit](problem, layout),
  });
  const { layout } = keptLayout(withoutLimits(base, [limit]), budget);
  if (layout === undefined) return undefined;
  const first = measured(layout);
  if (limit === 'device-count') return first;
  const isFigure = first.figure !== undefined;
  return (isFigure ? leastBeyond : fewestPlaces)(first, measured, { problem: base, limit, budget });
};
