import { panelsUp } from '../../backbone/panels-up.ts';
import type { BoatIndex } from '../../boat/boat-index.ts';
import { byCodeUnit, splitDotted } from '../../boat/ids.ts';
import { limitValue } from '../../boat/limit-value.ts';
import { isAboard } from '../../boat/phase.ts';
import type { Panel } from '../../boat/supply.ts';
import type { StandingJoin } from '../../plan-shape.ts';
import type { UnitLoad } from '../unit-loads.ts';
import { banksUp } from './banks-up.ts';
import { panelV } from './panel-v.ts';

/** Something that draws and that no circuit names: a dc port, a bus or a converter, where it stands and the volts it stands. */
export interface Wanted {
  readonly target: string;
  readonly place?: string;
  readonly leastV: number;
  readonly mostV: number;
  readonly mostA: number;
}

/** The dc ports that nothing feeds, the buses with units aboard and the converters with panels on them that no circuit names. */
export const wantedCircuits = (
  index: BoatIndex,
  {
    phase,
    loads,
    joins,
  }: { readonly phase: number; readonly loads: readonly UnitLoad[]; readonly joins: readonly StandingJoin[] },
): readonly Wanted[] => {
  const panels = [...index.panels.values()];
  const named = new Set(panels.flatMap(({ circuits }) => circuits.flatMap(({ feeds }) => feeds)));
  return [
    ...unfedPorts(index, loads),
    ...unfedBuses(index, { phase, loads, joins, named }),
    ...index.boat.supply.dcdc
      .filter(({ id }) => !named.has(id) && panels.some(({ from }) => from === id))
      .map(({ id, place }) => ({ target: id, place, leastV: 0, mostV: Number.POSITIVE_INFINITY, mostA: 0 })),
  ];
};

const unfedPorts = (index: BoatIndex, loads: readonly UnitLoad[]): Wanted[] =>
  loads
    .filter(({ source, port }) => source.by === 'nothing' && isDc(index, port))
    .map(({ port, kit, minV, maxV, mostA }) => {
      const place = index.kit.get(kit)?.place;
      return { target: port, ...(place === undefined ? {} : { place }), leastV: minV, mostV: maxV, mostA };
    });

const isDc = (index: BoatIndex, port: string): boolean => {
  const { kit, part } = splitDotted(port);
  const sheet = index.sheetOf.get(kit);
  return sheet?.ports.some(({ id, protocol, role }) => id === part && protocol === 'dc' && role !== 'talk') === true;
};

const unfedBuses = (
  index: BoatIndex,
  {
    phase,
    loads,
    joins,
    named,
  }: {
    readonly phase: number;
    readonly loads: readonly UnitLoad[];
    readonly joins: readonly StandingJoin[];
    readonly named: ReadonlySet<string>;
  },
): Wanted[] => {
  const busMostV = limitValue(index.boat, 'nmea2000-device-volts-most');
  return index.boat.buses
    .filter(({ id }) => !named.has(id))
    .flatMap(({ id }) => {
      const units = joins
        .flatMap(({ bus, members }) => (bus === id ? members.map(({ kit }) => kit) : []))
        .flatMap((kit) => index.kit.get(kit) ?? [])
        .filter((unit) => isAboard(unit, phase));
      const [first] = units;
      if (first === undefined) return [];
      const drawn = loads.filter(({ source }) => source.by === 'bus' && source.bus === id);
      return [
        {
          target: id,
          place: first.place,
          leastV: Math.max(0, ...drawn.map(({ minV }) => minV)),
          mostV: Math.min(busMostV, ...drawn.map(({ maxV }) => maxV)),
          mostA: drawn.reduce((sum, { mostA }) => sum + mostA, 0),
        },
      ];
    });
};

const distanceM = (index: BoatIndex, one: string | undefined, other: string): number => {
  const [from, to] = [index.places.get(one ?? ''), index.places.get(other)];
  if (from === undefined || to === undefined) return Number.POSITIVE_INFINITY;
  return Math.hypot(from.xM - to.xM, from.yM - to.yM, from.zM - to.zM);
};

/** Whether a panel has a battery in the end that turns no starter, and volts that a unit stands. */
const suits = (index: BoatIndex, panel: Panel, { leastV, mostV }: Wanted): boolean => {
  const volts = panelV(index, panel);
  const { banks } = banksUp(index, panel.id);
  const isAlive = banks.length > 0 && banks.every((bank) => bank.for !== 'start');
  return isAlive && volts >= leastV && volts <= mostV;
};

/**
 * The panel nearest to what wants a circuit, as the crow flies, of those whose volts it stands: one on a battery before one
 * behind a converter, which has little to give. Absent where there is none.
 */
export const panelFor = (index: BoatIndex, wanted: Wanted): Panel | undefined => {
  const fit = [...index.panels.values()].filter((panel) => suits(index, panel, wanted));
  const ranked = fit.map((panel) => ({
    panel,
    isConverted: !index.banks.has(panelsUp(index, panel).source),
    farM: distanceM(index, wanted.place, panel.place),
  }));
  ranked.sort(
    (one, other) =>
      Number(one.isConverted) - Number(other.isConverted) ||
      (one.farM === other.farM ? byCodeUnit(one.panel.id, other.panel.id) : one.farM - other.farM),
  );
  return ranked[0]?.panel;
};
