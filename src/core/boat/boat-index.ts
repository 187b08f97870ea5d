import type { Boat, Bus, Cable, Join, Kit, Place, Way } from './boat-schema.ts';
import type { Port, Sheet } from './sheet.ts';
import { applyChanges } from './sheet-changes.ts';
import type { Bank, Panel } from './supply.ts';

/** One boat with everything found by id, and each unit's sheet as it is for that very unit. */
export interface BoatIndex {
  readonly boat: Boat;
  readonly places: ReadonlyMap<string, Place>;
  readonly ways: ReadonlyMap<string, Way>;
  readonly cables: ReadonlyMap<string, Cable>;
  readonly kit: ReadonlyMap<string, Kit>;
  readonly buses: ReadonlyMap<string, Bus>;
  readonly joins: ReadonlyMap<string, Join>;
  readonly banks: ReadonlyMap<string, Bank>;
  readonly panels: ReadonlyMap<string, Panel>;
  /** sheet by kit id, with the unit's own changes and instances applied */
  readonly sheetOf: ReadonlyMap<string, Sheet>;
}

const byId = <Entry extends { readonly id: string }>(entries: readonly Entry[]): ReadonlyMap<string, Entry> =>
  new Map(entries.map((entry) => [entry.id, entry]));

const withInstances = (sheet: Sheet, instances: NonNullable<Kit['instances']>): Sheet => ({
  ...sheet,
  ports: sheet.ports.map((port) => {
    const own = instances.filter((entry) => entry.port === port.id);
    return own.length === 0 ? port : instancedPort(port, own);
  }),
});

/** A kit instance stands beside a port's bare reading; for a message it is looked up by reading, so it is kept on the port's sends of that reading. */
const instancedPort = (port: Port, own: NonNullable<Kit['instances']>): Port => {
  if (port.sends === undefined) return port;
  return {
    ...port,
    sends: port.sends.map((sent) => {
      const match = own.find((entry) => sent.reading === entry.reading);
      return match === undefined ? sent : { ...sent, instance: match.instance };
    }),
  };
};

/** Finds everything in a boat by id. Pure; keep the result beside the boat it was made from. */
export const indexBoat = (boat: Boat): BoatIndex => {
  const sheets = byId(boat.sheets);
  const sheetOf = new Map<string, Sheet>();
  for (const unit of boat.kit) {
    const sheet = sheets.get(unit.sheet);
    if (sheet === undefined) continue;
    sheetOf.set(unit.id, withInstances(applyChanges(sheet, unit.changes ?? []), unit.instances ?? []));
  }
  return {
    boat,
    places: byId(boat.places),
    ways: byId(boat.ways),
    cables: byId(boat.cables),
    kit: byId(boat.kit),
    buses: byId(boat.buses),
    joins: byId(boat.joins),
    banks: byId(boat.supply.banks),
    panels: byId(boat.supply.panels),
    sheetOf,
  };
};

/** The port `kit.port` of a boat, as that unit has it. */
export const portOf = (index: BoatIndex, dotted: string): Port | undefined => {
  const [kit = '', port] = dotted.split('.');
  return index.sheetOf.get(kit)?.ports.find((entry) => entry.id === port);
};
