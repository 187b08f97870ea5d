import type { BoatIndex } from '../boat/boat-index.ts';
import { byCodeUnit, splitDotted } from '../boat/ids.ts';
import type { LineEntry } from '../plan-shape.ts';
import { panelTail } from '../ways/feed-lines.ts';
import { keptCables, keptLine, type LineEnd, type LineGap, laidLine } from '../ways/line-entry.ts';
import { oneAfterOther } from '../ways/pinned-routes.ts';
import type { LineRoute, Router } from '../ways/routes.ts';
import { feedPanel } from './feed-panel.ts';
import type { Layout, LayoutStep, Problem } from './problem.ts';
import { feedRoute, plugOfPort, settledDrop } from './settled-leads.ts';

/** The lines of a bus, sorted by id: stretches of trunk, drops, the feed; the drop of each device; what has no route. */
export interface BusLines {
  readonly lines: readonly LineEntry[];
  /** line id by `kit.port` */
  readonly dropOf: ReadonlyMap<string, string>;
  readonly gaps: readonly LineGap[];
}

interface BusLineAsk {
  readonly index: BoatIndex;
  readonly router: Router;
  readonly problem: Problem;
  readonly layout: Layout;
}

/**
 * The cables of a bus as a layout lays them: trunk from each tee or end to the next along the walk, a drop from each tee to
 * its device with the tail there, the feed from the panel to its tee. Kept cables that reach from one to the other are used
 * as they lie.
 */
export const busLines = (ask: BusLineAsk): BusLines => {
  const gaps: LineGap[] = [];
  const dropOf = new Map<string, string>();
  const lines = trunkLines(ask);
  for (const step of ask.layout.walk) {
    for (const tee of step.tees) {
      const wanted = tee === 'feed' ? feedLine(ask, step.place) : dropLine(ask, { tee, place: step.place });
      if (wanted === undefined) continue;
      if ('serves' in wanted) gaps.push(wanted);
      else lines.push(wanted);
      if (!('serves' in wanted) && tee !== 'feed') dropOf.set(tee, wanted.id);
    }
  }
  return { lines: lines.sort((one, other) => byCodeUnit(one.id, other.id)), dropOf, gaps };
};

export interface Stop {
  readonly step: number;
  readonly first: string;
  readonly last: string;
}

/** The steps at which the trunk is cut: those with tees, and both ends. */
export const stopsOf = (walk: readonly LayoutStep[]): readonly Stop[] =>
  walk.flatMap(({ place, tees }, step): Stop[] => {
    const [first = `end@${place}`] = tees;
    const isEnd = step === 0 || step === walk.length - 1;
    return tees.length > 0 || isEnd ? [{ step, first, last: tees.at(-1) ?? first }] : [];
  });

const trunkLines = ({ index, router, problem, layout: { walk } }: BusLineAsk): LineEntry[] => {
  const stops = stopsOf(walk);
  let cables = keptCables({ index, serves: [problem.bus], kind: 'trunk' });
  const lines: LineEntry[] = [];
  for (const [n, stop] of stops.entries()) {
    const next = stops[n + 1];
    const [start, end] = [walk[stop.step], next === undefined ? undefined : walk[next.step]];
    if (next === undefined || start === undefined || end === undefined) continue;
    const ways = walk.slice(stop.step + 1, next.step + 1).flatMap(({ via }) => via ?? []);
    const route = router.along({ from: start.place, ways });
    if (route === undefined) continue;
    const from = { name: `${problem.bus}/${stop.last}`, place: start.place };
    const to = { name: `${problem.bus}/${next.first}`, place: end.place };
    const kept = keptLine({ index, router, kind: 'trunk', ends: [from, to], cables });
    const lies = kept !== undefined && hasWays(kept, ways);
    lines.push(lies ? kept : laidLine({ index, kind: 'trunk', ends: [from, to], route, tails: [] }));
    if (lies) cables = cables.filter(({ id }) => !kept.kept?.includes(id));
  }
  return apart(lines);
};

/** Whether a line runs through just these ways, from either end. */
const hasWays = (line: LineEntry, ways: readonly string[]): boolean =>
  [ways, ways.toReversed()].some((order) => order.join() === line.ways.join());

/** A trunk that leaves a lone tee for an end without one and comes back would have two stretches of one name. */
const apart = (lines: readonly LineEntry[]): LineEntry[] =>
  lines.map((line, n) => {
    const before = lines.slice(0, n).filter(({ id }) => id === line.id).length;
    return before === 0 ? line : { ...line, id: `${line.id}#${before + 1}` };
  });

const dropLine = (
  { index, router, problem }: BusLineAsk,
  { tee, place }: { readonly tee: string; readonly place: string },
): LineEntry | LineGap | undefined => {
  const device = problem.devices.find(({ id }) => id === tee);
  if (device === undefined) return undefined;
  const { kit } = splitDotted(tee);
  const plug = plugOfPort(index, tee);
  const ends: readonly [LineEnd, LineEnd] = [
    { name: problem.bus, place },
    { name: plug, place: index.kit.get(kit)?.place ?? device.place },
  ];
  const cables = keptCables({ index, serves: [problem.bus], kind: 'drop' }).filter(({ from, to }) =>
    [from.at, to.at].includes(plug),
  );
  const kept = keptLine({ index, router, kind: 'drop', ends, cables });
  if (kept !== undefined) return kept;
  const settled = settledDrop({ index, router, bus: problem.bus }, tee);
  const toUnit = settled === undefined ? undefined : backwards(settled);
  const toSettled = router.between({ kind: 'drop', from: place, to: device.place });
  if (toSettled === undefined) return { kind: 'drop', from: problem.bus, to: plug, serves: [problem.bus] };
  const route = toUnit === undefined ? toSettled : oneAfterOther(toSettled, toUnit);
  const guessed = index.kit.get(kit)?.tail?.how === 'guessed';
  const tail = {
    mm: device.tailMm - (settled?.mm ?? 0),
    longestMm: device.maxTailMm - (settled?.longestMm ?? 0),
    guessed,
  };
  return laidLine({ index, kind: 'drop', ends, route, tails: [tail] });
};

const backwards = (route: LineRoute): LineRoute => ({
  ...route,
  places: route.places.toReversed(),
  ways: route.ways.toReversed(),
});

const feedLine = ({ index, router, problem }: BusLineAsk, place: string): LineEntry | LineGap | undefined => {
  const devicePlaces = problem.devices.map(({ id, place: at }) => index.kit.get(splitDotted(id).kit)?.place ?? at);
  const panel = feedPanel({ index, router, bus: problem.bus, devicePlaces });
  if (panel === undefined) return undefined;
  const ends: readonly [LineEnd, LineEnd] = [
    { name: panel.id, place: panel.place },
    { name: problem.bus, place },
  ];
  const circuits = panel.circuits.filter(({ feeds }) => feeds.includes(problem.bus)).map(({ id }) => id);
  const cables = keptCables({ index, serves: [problem.bus, ...circuits], kind: 'feed' });
  const kept = keptLine({ index, router, kind: 'feed', ends, cables });
  if (kept !== undefined) return kept;
  const route = feedRoute({ index, router, bus: problem.bus }, { panel, to: place });
  return route === undefined
    ? { kind: 'feed', from: panel.id, to: problem.bus, serves: [problem.bus] }
    : laidLine({ index, kind: 'feed', ends, route, tails: [panelTail()] });
};
