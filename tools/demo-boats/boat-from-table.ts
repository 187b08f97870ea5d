import type { Boat, Cable, Join, Kit, Need, Way } from '../../src/core/boat/boat-schema.ts';
import { byCodeUnit } from '../../src/core/boat/ids.ts';
import type { OwnDay } from '../../src/core/boat/own-day.ts';
import type { Sheet } from '../../src/core/boat/sheet.ts';
import type { Bank, Circuit, Panel, Supply } from '../../src/core/boat/supply.ts';
import { typicalSheets } from '../../src/core/facts/sheets/index.ts';
import { type OpeningsByHand, openingsFromTable } from './openings-from-table.ts';
import type { CableRow, CircuitRow, KitRow, PanelRow, Table } from './table.ts';

type Instance = NonNullable<Kit['instances']>[number];
type Instanced = Omit<Instance, 'instance'> & Partial<Pick<Instance, 'instance'>>;

/** What a table says only in words, written out by hand for one boat. */
export interface ByHand {
  readonly joins: readonly Join[];
  /** by cable id; every cable of the table must be here */
  readonly cables: Readonly<Record<string, Pick<Cable, 'kind' | 'conductors' | 'serves' | 'areaMm2' | 'coax'>>>;
  /** by kit id: the ports and readings that its one instance of the table stands for, or an instance of their own */
  readonly instanced: Readonly<Record<string, readonly Instanced[]>>;
  readonly changes: Readonly<Record<string, NonNullable<Kit['changes']>>>;
  readonly buses: Boat['buses'];
  /** by kit id: how a unit stands, where somebody looked */
  readonly mounts?: Readonly<Record<string, NonNullable<Kit['mount']>>>;
  /** by kit id: what is known of the spot a sensor or a compass sits in */
  readonly sites?: Readonly<Record<string, NonNullable<Kit['site']>>>;
  /** where keel and propeller are, and how long her waterline is */
  readonly underwater?: NonNullable<Boat['hull']['underwater']>;
  /** by kit id: what her owner knows of wifi and passwords */
  readonly remotes?: Readonly<Record<string, NonNullable<Kit['remote']>>>;
  /** by way: what may run in it and how often, where the table says so in words */
  readonly ways?: Readonly<Record<string, Pick<Way, 'allows' | 'trunkTimes'>>>;
  /** by sheet kind of the table: the typical sheet it means, where its id is another */
  readonly sheets?: Readonly<Record<string, string>>;
  /** units that the table names only in the words of another */
  readonly extraKit?: readonly KitRow[];
  /** by panel: circuits that the table leaves out */
  readonly extraCircuits?: Readonly<Record<string, readonly Circuit[]>>;
  /** what the table tells of her supply only in words: of banks and panels by id, and of her chargers */
  readonly supply: {
    readonly banks: Readonly<Record<string, Partial<Bank>>>;
    readonly panels: Readonly<Record<string, Partial<Panel>>>;
  } & Pick<Supply, 'chargers' | 'negativeAt'>;
  /** what she weighs, and where she is steered from */
  readonly displacement: NonNullable<Boat['hull']['displacement']>;
  readonly steering: NonNullable<Boat['steering']>;
  readonly days: readonly OwnDay[];
  readonly openings: OpeningsByHand;
  /** mends a need that the rest of the table cannot meet */
  readonly need: (need: Need) => Need;
}

const circuitKinds: ReadonlyMap<string, Circuit['kind']> = new Map([
  ['breaker', 'breaker'],
  ['breaker, slow', 'slow-breaker'],
  ['fuse', 'fuse'],
  ['fuse, spare', 'fuse'],
  ['fuse, one a leg', 'fuse'],
  ['fuse, with a 1 A in-line fuse at each display', 'fuse'],
  ['always live fuse', 'live-fuse'],
]);

const found = <Value>(value: Value | undefined, what: string): Value => {
  if (value === undefined) throw new Error(`The tables name ${what}, which is nowhere.`);
  return value;
};

const wayFrom = (
  { straightM: _straightM, runsNow: _runsNow, near = [], ...way }: Table['ways'][number],
  own: ByHand,
): Way => ({ ...way, ...own.ways?.[way.id], ...(near.length === 0 ? {} : { near }) });

const cableFrom = (row: CableRow, own: ByHand['cables'][string]): Cable => ({
  id: row.id,
  name: row.kind,
  ...own,
  from: { place: row.from },
  to: { place: row.to },
  ways: row.ways,
  length: row.length,
  diameterMm: row.diameterMm,
  condition: row.condition,
  fate: row.fate,
});

const instancesOf = (row: KitRow, own: ByHand): Instance[] => {
  const entries =
    row.instance === undefined ? own.instanced[row.id] : found(own.instanced[row.id], `what ${row.id} counts`);
  return (entries ?? []).map((entry) => ({
    ...entry,
    instance: found(entry.instance ?? row.instance, `an instance of ${row.id}`),
  }));
};

const kitFrom = (row: KitRow, own: ByHand): Kit => {
  const changes = own.changes[row.id];
  const mount = own.mounts?.[row.id];
  const remote = own.remotes?.[row.id];
  const site = own.sites?.[row.id];
  const instances = instancesOf(row, own);
  return {
    id: row.id,
    name: row.name,
    sheet: own.sheets?.[row.sheetKind] ?? row.sheetKind,
    fate: row.fate,
    ...(row.phase === undefined ? {} : { phase: row.phase }),
    place: row.place,
    ...(row.tail === undefined ? {} : { tail: row.tail }),
    ...(mount === undefined ? {} : { mount }),
    ...(remote === undefined ? {} : { remote }),
    ...(site === undefined ? {} : { site }),
    ...(instances.length === 0 ? {} : { instances }),
    ...(changes === undefined ? {} : { changes }),
  };
};

const circuitFrom = (panel: string, row: CircuitRow, table: Table): Circuit => {
  const { panels, dcdc } = table.supply;
  const ids = new Set([...table.kit.flatMap((unit) => unit.buses), ...[...panels, ...dcdc].map(({ id }) => id)]);
  const units = new Set(table.kit.map((unit) => unit.id));
  const words = row.feeds.filter((feed) => !ids.has(feed) && !units.has(feed));
  const name = row.kind.endsWith(', spare') ? 'spare' : words.join(', ');
  const fedHere = table.kit.filter((unit) => unit.feed === `${panel}/${row.id}`).map((unit) => `${unit.id}.dc`);
  return {
    id: row.id,
    ...(name === '' ? {} : { name }),
    ratingA: row.ratingA,
    kind: found(circuitKinds.get(row.kind), `a circuit of kind ${row.kind}`),
    feeds: [...fedHere, ...row.feeds.filter((feed) => ids.has(feed))].sort(byCodeUnit),
  };
};

const panelFrom = ({ mainFuse: _mainFuse, feeder, ...row }: PanelRow, table: Table, own: ByHand): Panel => ({
  ...row,
  ...own.supply.panels[row.id],
  ...(feeder === undefined ? {} : { feeder: { length: feeder.length, areaMm2: feeder.areaMm2 } }),
  circuits: [
    ...row.circuits.map((circuit) => ({
      ...circuitFrom(row.id, circuit, table),
      ...(circuit.kind.includes('at each') ? { fusedEach: true } : {}),
    })),
    ...(own.extraCircuits?.[row.id] ?? []),
  ],
});

/** The boat file that a table and what was written out by hand give together. */
export const boatFromTable = (table: Table, own: ByHand): Boat => {
  const sheets: ReadonlyMap<string, Sheet> = new Map(typicalSheets.map((sheet) => [sheet.id, sheet]));
  const kit = [...table.kit, ...(own.extraKit ?? [])].map((row) => kitFrom(row, own));
  const used = [...new Set(kit.map(({ sheet }) => sheet))].sort(byCodeUnit);
  return {
    format: 'fairlead-boat',
    version: 1,
    name: table.name,
    hull: {
      ...table.hull,
      displacement: own.displacement,
      ...(own.underwater === undefined ? {} : { underwater: own.underwater }),
    },
    places: table.places,
    ways: table.ways.map((row) => wayFrom(row, own)),
    cables: table.cables.map((row) => cableFrom(row, found(own.cables[row.id], `cable ${row.id}`))),
    sheets: used.map((id) => found(sheets.get(id), `a sheet ${id}`)),
    kit,
    needs: table.needs.map(own.need),
    buses: own.buses,
    joins: [...own.joins],
    supply: {
      banks: table.supply.banks.map((bank) => ({ ...bank, ...own.supply.banks[bank.id] })),
      panels: table.supply.panels.map((panel) => panelFrom(panel, table, own)),
      dcdc: table.supply.dcdc,
      ...(own.supply.chargers === undefined ? {} : { chargers: own.supply.chargers }),
      ...(own.supply.negativeAt === undefined ? {} : { negativeAt: own.supply.negativeAt }),
    },
    days: [...own.days],
    steering: [...own.steering],
    openings: openingsFromTable(table.openings, own.openings),
  };
};
