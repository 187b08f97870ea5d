import { readingsOf } from '../facts/message-readings.ts';
import type { Boat, Bus, Cable, Join, Kit, Place, Way } from './boat-schema.ts';
import { canonicalSheet } from './canonical-sheet.ts';
import { rememberFor } from './remember-for.ts';
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

/**
 * A unit's own instance for a reading goes on every `sends` of the port that gives it, by its bare name or by a message.
 * A message that gives several readings of different instances keeps the sheet's: one number would be wrong for some.
 */
const instancedPort = (port: Port, own: NonNullable<Kit['instances']>): Port => {
  if (port.sends === undefined) return port;
  return {
    ...port,
    sends: port.sends.map((sent) => {
      const given = new Set<string>(readingsOf(sent).map((entry) => entry.reading));
      const instances = new Set(own.filter((entry) => given.has(entry.reading)).map((entry) => entry.instance));
      const [instance] = instances;
      return instance === undefined || instances.size > 1 ? sent : { ...sent, instance };
    }),
  };
};

/** The sheet of one unit. A change may bring a whole list in any order, so the changed sheet is put in order again. */
const ownSheet = rememberFor({
  most: 16,
  keyOf: (unit: Pick<Kit, 'changes' | 'instances'>) => JSON.stringify([unit.changes, unit.instances]),
  find: (sheet: Sheet, { changes, instances }) => {
    const own = changes === undefined ? sheet : canonicalSheet(applyChanges(sheet, changes));
    return instances === undefined ? own : withInstances(own, instances);
  },
});

/** Finds everything in a boat by id. Pure; keep the result beside the boat it was made from. */
export const indexBoat = (boat: Boat): BoatIndex => {
  const sheets = byId(boat.sheets);
  const sheetOf = new Map<string, Sheet>();
  for (const unit of boat.kit) {
    const sheet = sheets.get(unit.sheet);
    if (sheet === undefined) continue;
    sheetOf.set(unit.id, unit.changes === undefined && unit.instances === undefined ? sheet : ownSheet(sheet, unit));
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
