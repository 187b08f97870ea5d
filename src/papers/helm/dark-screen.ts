import type { Plan } from '../../core/plan-shape.ts';
import type { CardBoat } from '../cards/card-boat.ts';
import { loadRows } from '../lists/load-rows.ts';
import { printAmps } from '../lists/print-power.ts';
import type { Helm } from './helms.ts';

/** What to do where one screen is dark: its protection, and where to look meanwhile. */
export interface DarkScreenRow {
  readonly screen: string;
  readonly guard: string;
  /** other screens, those with most of the same readings first */
  readonly instead: readonly string[];
}

const unitOf = (port: string): string => port.split('.')[0] ?? port;

const guardOf = (index: CardBoat, plan: Plan, screen: string): string => {
  const feed = plan.feeds.find(({ to }) => unitOf(to) === screen);
  if (feed === undefined) {
    const row = loadRows(index, plan).find(({ key, after }) => unitOf(key) === screen && after !== undefined);
    return row === undefined ? 'what it lives on is not in the boat file' : `lives on ${row.fedBy}`;
  }
  const { panel, circuit, circuitA, fuseA, fuseBy } = feed;
  const place = index.panels.get(panel)?.place ?? '';
  const own = fuseBy === 'in-line' && fuseA !== undefined ? `, then its own fuse of ${printAmps(fuseA)} beside it` : '';
  return `${circuit}, ${printAmps(circuitA)}, panel ${panel}, ${index.places.get(place)?.name ?? place}${own}`;
};

const insteadOf = (index: CardBoat, { readings }: Plan, screen: string): string[] => {
  const has = (unit: string): ReadonlySet<string> =>
    new Set(
      readings
        .filter(({ at, arrives }) => arrives && at === unit)
        .map(({ reading, instance }) => `${reading} ${instance ?? ''}`),
    );
  const own = has(screen);
  const others = [...new Set(readings.map(({ at }) => at))].filter((at) => at !== screen);
  return others
    .map((at) => ({ at, same: [...has(at)].filter((key) => own.has(key)).length }))
    .filter(({ same }) => same > 0)
    .toSorted((one, other) => other.same - one.same)
    .map(({ at, same }) => `${index.kit.get(at)?.name ?? at} (${same} of ${own.size})`);
};

/** For each screen of a helm what feeds it and which other screens show the same. */
export const darkScreens = (index: CardBoat, plan: Plan, { screens }: Helm): DarkScreenRow[] =>
  screens.map((screen) => ({
    screen: index.kit.get(screen)?.name ?? screen,
    guard: guardOf(index, plan, screen),
    instead: insteadOf(index, plan, screen),
  }));
