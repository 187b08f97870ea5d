import type { BoatIndex } from '../../boat/boat-index.ts';
import { readingsOf } from '../../facts/message-readings.ts';
import { vitalKinds } from '../../facts/supply-figures.ts';
import type { LaidPlan } from '../../plan-shape.ts';
import type { LoadEntry } from '../../power-shape.ts';
import type { Rule } from '../rule.ts';
import { radiosAboard } from './radios.ts';
import { fedName, someNames, staysAboard, unitOf } from './supply-words.ts';

const screenKindsHere: readonly string[] = vitalKinds.screen;

/** What one circuit feeds, through panels and converters behind it; a ring is gone round once. */
const fedThrough = ({ panels, converters }: LaidPlan, feeds: readonly string[]): ReadonlySet<string> => {
  const fed = new Set<string>();
  const open = [...feeds];
  for (let target = open.pop(); target !== undefined; target = open.pop()) {
    if (fed.has(target)) continue;
    fed.add(target);
    const here = target;
    if (converters.some(({ converter }) => converter === here)) {
      open.push(...panels.filter(({ from }) => from === here).map(({ panel }) => panel));
    }
    const panel = panels.find((entry) => entry.panel === here);
    if (panel === undefined) continue;
    open.push(...panel.circuits.flatMap((circuit) => circuit.feeds));
    open.push(...panels.filter(({ from }) => from === here).map((entry) => entry.panel));
  }
  return fed;
};

const isDead = ({ port, source }: LoadEntry, fed: ReadonlySet<string>): boolean => {
  if (source.by === 'bus') return fed.has(source.bus);
  return source.by === 'unit' || source.by === 'network' ? fed.has(source.port ?? '') : fed.has(port);
};

/** What each unit draws. */
type UnitLoads = ReadonlyMap<string, readonly LoadEntry[]>;

const loadsByUnit = (loads: readonly LoadEntry[]): UnitLoads => {
  const byUnit = new Map<string, LoadEntry[]>();
  for (const load of loads) {
    const unit = unitOf(load.port);
    const own = byUnit.get(unit);
    if (own === undefined) byUnit.set(unit, [load]);
    else own.push(load);
  }
  return byUnit;
};

/** Units that are dark without what a circuit feeds: by their own feed, or by the bus where they have no other. */
const deadUnits = (loadsOf: UnitLoads, fed: ReadonlySet<string>): ReadonlySet<string> =>
  new Set(
    [...loadsOf].flatMap(([unit, own]) => {
      const straight = own.filter(({ source }) => source.by !== 'bus');
      return (straight.length > 0 ? straight : own).some((load) => isDead(load, fed)) ? [unit] : [];
    }),
  );

/** Whether a unit finds the position itself: a port that only passes on what another hears is no source. */
const givesPosition = (index: BoatIndex, unit: string): boolean => {
  const { ports = [], turns = [] } = index.sheetOf.get(unit) ?? {};
  const passedOn = new Set(
    turns.filter(({ carries }) => carries.some(({ reading }) => reading === 'position')).map(({ toPort }) => toPort),
  );
  return ports.some(
    ({ id, sends = [] }) =>
      !passedOn.has(id) && sends.some((sent) => readingsOf(sent).some(({ reading }) => reading === 'position')),
  );
};

interface Vital {
  readonly words: string;
  readonly units: readonly string[];
}

/** A unit that draws from nothing yet is not counted on; one that draws nothing has a battery of its own. */
const isLive = (loadsOf: UnitLoads, unit: string): boolean => {
  const own = loadsOf.get(unit) ?? [];
  return own.length === 0 || own.some(({ source }) => source.by !== 'nothing');
};

/** What a person needs one of: to call, to know where the boat is, to see it. */
const vitals = (index: BoatIndex, loadsOf: UnitLoads): Vital[] => {
  const aboard = index.boat.kit.map(({ id }) => id).filter((id) => staysAboard(index, id) && isLive(loadsOf, id));
  return [
    { words: 'radio', units: radiosAboard(index).filter((id) => isLive(loadsOf, id)) },
    { words: 'position', units: aboard.filter((id) => givesPosition(index, id)) },
    { words: 'screen', units: aboard.filter((id) => screenKindsHere.includes(index.sheetOf.get(id)?.kind ?? '')) },
  ].filter(({ units }) => units.length > 0);
};

const missing = (lost: readonly Vital[]): string => {
  const words = lost.map((vital) => `no ${vital.words}`);
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1)} are`;
};

/** After any one circuit opens there is a radio, a position and a screen. */
export const oneFuseTakesAll: Rule = {
  id: 'supply/one-fuse-takes-all',
  level: 'fault',
  title: 'One circuit takes every radio, every position or every screen with it.',
  sources: ['practice-separate-feeds', 'cfr-46-28-860'],
  check: ({ index, plan }) => {
    const loadsOf = loadsByUnit(plan.loads);
    const wanted = vitals(index, loadsOf);
    return plan.panels.flatMap(({ panel, circuits }) =>
      circuits.flatMap(({ circuit, feeds }) => {
        const dead = deadUnits(loadsOf, fedThrough(plan, feeds));
        const lost = wanted.filter(({ units }) => units.every((unit) => dead.has(unit)));
        const units = [...new Set(lost.flatMap((vital) => vital.units))];
        // a lone radio goes with its own fuse, and a screen with its own position too
        if (lost.length < 2 || units.length < 2) return [];
        return [
          {
            about: [circuit, panel],
            level: lost.length === 3 ? ('fault' as const) : ('doubt' as const),
            says: `When the circuit ${circuit} opens, ${missing(lost)} left: ${someNames(units.map((unit) => fedName(index, unit)))} go dark together.`,
            measured: { value: lost.length, unit: 'of radio, position and screen' },
            cure: 'Give the radio a circuit of its own at the main panel, and part the screen from the position.',
          },
        ];
      }),
    );
  },
};
