import type { BoatIndex } from '../boat/boat-index.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { lastPhase } from '../boat/phase.ts';
import type { Port, Power, Sheet } from '../boat/sheet.ts';
import { joinsOf } from '../joins/joins-of.ts';
import { lenOf } from '../network/len-of.ts';
import { addLengths, type Router } from '../ways/routes.ts';
import { tailOf } from '../ways/tails.ts';
import type { ProblemDevice } from './problem.ts';
import { settledDrop } from './settled-leads.ts';

/** A device of a bus before its least volts and LEN are known: `id` is `kit.port`. */
export interface BusPort {
  readonly id: string;
  readonly kit: string;
  readonly place: string;
  readonly port: Port;
  readonly sheet: Sheet;
}

/** The NMEA 2000 ports joined to a bus, of units aboard in the last phase, sorted by id. */
export const busPorts = (index: BoatIndex, bus: string): readonly BusPort[] => {
  const found = new Map<string, BusPort>();
  const members = joinsOf(index, lastPhase(index.boat))
    .filter((join) => join.kind === 'nmea2000' && join.bus === bus)
    .flatMap((join) => join.members);
  for (const member of members) {
    const unit = index.kit.get(member.kit);
    const sheet = index.sheetOf.get(member.kit);
    const port = sheet?.ports.find((entry) => entry.id === member.port);
    if (unit === undefined || sheet === undefined || port?.protocol !== 'nmea2000') continue;
    const id = `${member.kit}.${member.port}`;
    found.set(id, { id, kit: member.kit, place: unit.place, port, sheet });
  }
  return [...found.values()].sort((one, other) => byCodeUnit(one.id, other.id));
};

/**
 * The devices of a bus as the layout problem counts them: place, tail, LEN, least volts. Where the route of a drop is settled
 * the device counts as standing at the far end of it, with that much more tail.
 */
export const busDevices = ({
  index,
  router,
  bus,
  ports,
  nominalV,
  leastMv,
}: {
  readonly index: BoatIndex;
  readonly router: Router;
  readonly bus: string;
  readonly ports: readonly BusPort[];
  /** volts that turn the watts of a device into amperes where its sheet does not say at which */
  readonly nominalV: number;
  /** least volts of a device whose sheet does not say */
  readonly leastMv: number;
}): readonly ProblemDevice[] =>
  ports.map(({ id, kit, place, port, sheet }) => {
    const power = sheet.power?.find((entry) => entry.port === port.id);
    const own = tailOf({ index, kit, kind: 'drop' });
    const settled = settledDrop({ index, router, bus }, id);
    const tail = settled === undefined ? own : addLengths([own, settled]);
    return {
      id,
      place: settled?.places.at(-1) ?? place,
      tailMm: tail.mm,
      maxTailMm: tail.longestMm,
      len: portLen({ port, power, nominalV }),
      minMv: power === undefined ? leastMv : Math.round(power.minV * 1000),
    };
  });

/** LEN as the sheet says; absent, the largest current / 50 mA rounded up; a device that does not live on the bus counts 1. */
const portLen = ({
  port,
  power,
  nominalV,
}: {
  readonly port: Port;
  readonly power: Power | undefined;
  readonly nominalV: number;
}): number => {
  if (port.len !== undefined) return port.len;
  if (power === undefined) return 1;
  const largestA = power.unit === 'A' ? power.max : power.max / (power.atV ?? nominalV);
  return lenOf(largestA);
};
