import { panelNominalV } from '../backbone/panel-volts.ts';
import { panelsUp } from '../backbone/panels-up.ts';
import type { BoatIndex } from '../boat/boat-index.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { isAboard } from '../boat/phase.ts';
import type { Power, Sheet } from '../boat/sheet.ts';
import { supplyDefaults } from '../facts/defaults.ts';
import type { StandingJoin } from '../plan-shape.ts';
import type { LoadEntry, LoadSource } from '../power-shape.ts';
import { type Circuits, circuitsByTarget } from './circuits-by-target.ts';
import { giversByPort } from './givers.ts';
import { lowestSupplyV } from './steady-current.ts';

/** What one port of a unit draws, ready for the solver: `most` in amperes at any volts, or in watts, as it behaves. */
export interface UnitLoad extends LoadEntry {
  readonly kit: string;
  readonly most: number;
  /** at the nominal volts, W */
  readonly typicalW: number;
}

/** Draw of a constant-power unit in watts, of any other in amperes: P = W or A x V; I = A or W / V, V where the sheet measured it. */
export const drawOf = (
  { behaves, unit, atV }: Pick<Power, 'behaves' | 'unit' | 'atV'>,
  value: number,
  nominalV: number,
): number => {
  const volts = atV ?? nominalV;
  if (behaves === 'power') return unit === 'W' ? value : value * volts;
  return unit === 'A' ? value : value / volts;
};

interface LoadAsk {
  readonly port: string;
  readonly kit: string;
  readonly power: Power;
  readonly drive: Sheet['drive'];
  readonly source: LoadSource;
  readonly from: string | undefined;
  readonly nominalV: number;
}

const loadOf = ({ port, kit, power, drive, source, from, nominalV }: LoadAsk): UnitLoad => {
  const isPower = power.behaves === 'power';
  const drawn = (value: number): number => drawOf(power, value, nominalV);
  const ampsOf = (draw: number): number => (isPower ? draw / lowestSupplyV(nominalV) : draw);
  const peakA = drive?.peakA ?? (power.peak === undefined ? undefined : ampsOf(drawn(power.peak)));
  return {
    port,
    kit,
    source,
    ...(from === undefined ? {} : { from }),
    nominalV,
    behaves: power.behaves,
    typicalA: ampsOf(drawn(power.typical)),
    mostA: ampsOf(drawn(power.max)),
    ...(peakA === undefined ? {} : { peakA }),
    minV: power.minV,
    maxV: power.maxV,
    ...(power.fuseA === undefined ? {} : { fuseA: power.fuseA }),
    most: drawn(power.max),
    typicalW: isPower ? drawn(power.typical) : drawn(power.typical) * nominalV,
  };
};

/** What feeds each port, and the panel it comes from in the end. */
interface Feeding {
  readonly source: LoadSource;
  readonly panel?: string;
}

const feedingOf = ({
  index,
  circuits,
  joins,
}: {
  readonly index: BoatIndex;
  readonly circuits: Circuits;
  readonly joins: readonly StandingJoin[];
}): ((port: string, protocol: string) => Feeding) => {
  const givers = giversByPort(index, joins, circuits);
  const busOf = new Map(
    joins.flatMap(({ bus, members }) =>
      bus === undefined ? [] : members.map(({ kit, port }): [string, string] => [`${kit}.${port}`, bus]),
    ),
  );
  const fed = (panel: string | undefined): { panel?: string } => (panel === undefined ? {} : { panel });
  return (port, protocol) => {
    const circuit = circuits.get(port);
    if (circuit !== undefined) return { source: { by: 'circuit', ...circuit }, panel: circuit.panel };
    const bus = busOf.get(port);
    if (bus !== undefined) return { source: { by: 'bus', bus }, ...fed(circuits.get(bus)?.panel) };
    const giver = givers.get(port);
    const panel = giver === undefined ? undefined : circuits.get(giver)?.panel;
    if (protocol === 'ethernet') {
      return { source: { by: 'network', ...(giver === undefined ? {} : { port: giver }) }, ...fed(panel) };
    }
    return giver === undefined ? { source: { by: 'nothing' } } : { source: { by: 'unit', port: giver }, ...fed(panel) };
  };
};

/**
 * What every unit aboard in a phase draws, port by port, and what feeds it. On a bus the volts are solved with its load
 * number; here it is what its sheet says. Pure; sorted by port.
 */
export const unitLoads = (index: BoatIndex, phase: number, joins: readonly StandingJoin[]): UnitLoad[] => {
  const feeding = feedingOf({ index, circuits: circuitsByTarget(index), joins });
  const loads: UnitLoad[] = [];
  for (const { id: kit } of index.boat.kit.filter((unit) => isAboard(unit, phase))) {
    const sheet = index.sheetOf.get(kit);
    for (const power of sheet?.power ?? []) {
      const port = `${kit}.${power.port}`;
      const fed = feeding(port, sheet?.ports.find(({ id }) => id === power.port)?.protocol ?? '');
      const panel = index.panels.get(fed.panel ?? '');
      loads.push(
        loadOf({
          port,
          kit,
          power,
          drive: sheet?.drive,
          source: fed.source,
          from: panel === undefined ? undefined : panelsUp(index, panel).source,
          nominalV: panel === undefined ? supplyDefaults.nominalV.value : panelNominalV(index, panel),
        }),
      );
    }
  }
  return loads.sort((one, other) => byCodeUnit(one.port, other.port));
};
