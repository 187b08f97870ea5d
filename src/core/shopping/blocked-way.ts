import type { LineEntry, TapeEntry } from '../plan-shape.ts';
import { makeRouter, type Router } from '../ways/routes.ts';
import { wayLengths } from '../ways/way-lengths.ts';
import type { CutLine } from './cut-lines.ts';
import { busOf, cutLine, type OrderInput } from './line-cutter.ts';
import { brokenLimits, type LaidBus } from './trunk-as-bought.ts';

type Walk = LaidBus['layout']['walk'];

/** A walk with every pass through a way led round it; absent where nothing else leads there. */
const walkRound = (router: Router, walk: Walk, shut: string): Walk | undefined => {
  const round: Walk[number][] = [];
  for (const step of walk) {
    const before = round.at(-1);
    if (step.via !== shut || before === undefined) {
      round.push(step);
      continue;
    }
    const route = router.between({ kind: 'trunk', from: before.place, to: step.place });
    if (route === undefined) return undefined;
    const passed = route.ways.map((via, n) => ({ place: route.places[n + 1] ?? step.place, via, tees: [] }));
    round.push(...passed.slice(0, -1), { ...step, via: route.ways.at(-1) ?? shut });
  }
  return round;
};

/** The longest a line could be once a way is shut, mm, its tees and ends where they are; absent where no way leads there. */
const longestRound = (router: Router, input: OrderInput, line: LineEntry, shut: string): number | undefined => {
  const { index } = input;
  const lengths = wayLengths({ ways: index.boat.ways, places: index.places });
  const onWaysMm = line.ways.reduce((sumMm, id) => sumMm + (lengths.get(id)?.longestMm ?? 0), 0);
  const tailsMm = Math.round(line.longestM * 1000) - onWaysMm;
  const [from, to] = [line.places[0], line.places.at(-1)];
  if (from === undefined || to === undefined) return undefined;
  if (line.kind !== 'trunk') {
    // Drops and the feed of a bus are laid by that bus, by length; other lines are led by least cost.
    const ask = { kind: line.kind, from, to };
    const route = busOf(input, line) !== undefined ? router.between(ask) : router.cheapest(ask);
    return route === undefined ? undefined : route.longestMm + tailsMm;
  }
  const walk = line.places.map((place, n) => ({
    place,
    tees: [],
    ...(n === 0 ? {} : { via: line.ways[n - 1] ?? '' }),
  }));
  const round = walkRound(router, walk, shut);
  if (round === undefined) return undefined;
  return round.reduce(
    (sumMm, { via }) => sumMm + (via === undefined ? 0 : (lengths.get(via)?.longestMm ?? 0)),
    tailsMm,
  );
};

const brokenRound = (router: Router, bus: LaidBus, shut: string): readonly string[] => {
  const walk = walkRound(router, bus.layout.walk, shut);
  const problem = { ...bus.problem, ways: bus.problem.ways.filter(({ id }) => id !== shut) };
  return walk === undefined ? [] : brokenLimits(problem, { ...bus.layout, walk });
};

/**
 * What the order for the lines on a way becomes once it is shut: each led round it with tees and ends where they are, what
 * cable for them costs then, the lines nothing else leads for, and limits that would break which hold now.
 */
export const blockedWay = (
  input: OrderInput,
  { way, cuts, laid }: { way: string; cuts: readonly CutLine[]; laid: readonly LaidBus[] },
): NonNullable<TapeEntry['blocked']> => {
  const { index } = input;
  const router = makeRouter({
    ...index,
    boat: { ...index.boat, ways: index.boat.ways.filter(({ id }) => id !== way) },
  });
  const noOtherWay: string[] = [];
  let cost = 0;
  for (const { line } of cuts) {
    const mm = longestRound(router, input, line, way);
    if (mm === undefined) noOtherWay.push(line.id);
    else cost += cutLine(input, line, mm)?.cost ?? 0;
  }
  // A bus with a line that nothing else leads for has no layout to check.
  const lost = new Set(noOtherWay);
  const busesOf = (isLost: boolean): ReadonlySet<string> =>
    new Set(
      cuts.filter(({ line }) => lost.has(line.id) === isLost).flatMap(({ line }) => busOf(input, line)?.id ?? []),
    );
  const [touched, cutOff] = [busesOf(false), busesOf(true)];
  const breaks = laid
    .filter(({ problem }) => touched.has(problem.bus) && !cutOff.has(problem.bus))
    .flatMap((bus) => {
      const now = new Set(input.buses.get(bus.problem.bus)?.layout.broken);
      return brokenRound(router, bus, way).filter((says) => !now.has(says));
    });
  return { cost, noOtherWay, breaks };
};
