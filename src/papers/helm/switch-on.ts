import { steeringKinds } from '../../core/facts/steering-figures.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { byCodeUnit } from '../../core/units/by-code-unit.ts';
import type { CardBoat } from '../cards/card-boat.ts';
import { endWords } from '../lists/end-words.ts';
import type { Helm } from './helms.ts';

/** One breaker or fuse to switch on, and what wakes with it. */
export interface SwitchOnRow {
  readonly panel: string;
  readonly circuit: string;
  readonly wakes: readonly string[];
}

const steersKinds: ReadonlySet<string> = new Set(steeringKinds.kinds);

const unitOf = (port: string): string => port.split('.')[0] ?? port;

/** What has to be awake for all that arrives at the screens of a helm: units on the way of each reading, and the buses they are on. */
const wantedAt = ({ readings, joins, steering }: Plan, helm: Helm, pilots: readonly string[]): ReadonlySet<string> => {
  const own = readings.filter(({ at, arrives }) => arrives && helm.screens.includes(at));
  const isSteered = steering.some(({ place }) => place === helm.place);
  const units = new Set([...helm.screens, ...own.flatMap(({ by }) => by.map(unitOf)), ...(isSteered ? pilots : [])]);
  const buses = joins.flatMap(({ bus, members }) =>
    bus !== undefined && members.some(({ kit }) => units.has(kit)) ? [bus] : [],
  );
  return new Set([...units, ...buses]);
};

/**
 * What to switch on for one helm, in order: buses first, then what measures and talks, then the screens that show it, what
 * steers last (common practice). A circuit stands once, where the first of what it feeds has its turn.
 */
export const switchOn = (index: CardBoat, plan: Plan, helm: Helm): SwitchOnRow[] => {
  const kindOf = (unit: string): string => index.sheetOf.get(unit)?.kind ?? '';
  const pilots = index.boat.kit.filter(({ id, fate }) => fate !== 'goes' && steersKinds.has(kindOf(id)));
  const wanted = wantedAt(
    plan,
    helm,
    pilots.map(({ id }) => id),
  );
  const turnOf = (fed: string): number => {
    if (index.buses.has(fed)) return 0;
    if (steersKinds.has(kindOf(unitOf(fed)))) return 3;
    return helm.screens.includes(unitOf(fed)) ? 2 : 1;
  };
  const feeds = plan.feeds.filter(({ to }) => wanted.has(unitOf(to)));
  const circuits = new Map<string, { panel: string; circuit: string; turn: number; wakes: string[] }>();
  for (const { panel, circuit, to } of feeds) {
    const key = `${panel}.${circuit}`;
    const entry = circuits.get(key) ?? { panel, circuit, turn: turnOf(to), wakes: [] };
    const name = endWords(index, index.buses.has(to) ? to : unitOf(to));
    circuits.set(key, {
      ...entry,
      turn: Math.min(entry.turn, turnOf(to)),
      wakes: [...new Set([...entry.wakes, name])],
    });
  }
  return [...circuits]
    .sort(([one, a], [other, b]) => a.turn - b.turn || byCodeUnit(one, other))
    .map(([, { panel, circuit, wakes }]) => ({ panel, circuit, wakes }));
};
