import type { FilePath } from './place-in-file.ts';

/** A thing of the boat file that has an id of its own: what it is, in words, and where it stands. */
export interface Named {
  readonly id: string;
  readonly what: string;
  readonly path: FilePath;
}

type WithIds = readonly { readonly id: string }[];

/** The lists of a boat whose entries have an id of their own. */
interface Lists {
  readonly places: WithIds;
  readonly ways: WithIds;
  readonly cables: WithIds;
  readonly sheets: WithIds;
  readonly kit: WithIds;
  readonly buses: WithIds;
  readonly joins: WithIds;
  readonly supply: {
    readonly banks: WithIds;
    readonly panels: readonly { readonly id: string; readonly circuits: WithIds }[];
    readonly dcdc: WithIds;
    readonly chargers?: WithIds;
  };
  readonly days?: WithIds;
  readonly openings?: WithIds;
}

const namedIn = (list: WithIds, what: string, path: FilePath): Named[] =>
  list.map((entry, at) => ({ id: entry.id, what, path: [...path, at] }));

/** Everything in a boat whose id must be its own in the whole file, in the order of the file. */
export const everyId = ({
  places,
  ways,
  cables,
  sheets,
  kit,
  buses,
  joins,
  supply,
  days = [],
  openings = [],
}: Lists): Named[] => [
  ...namedIn(places, 'a place', ['places']),
  ...namedIn(ways, 'a way', ['ways']),
  ...namedIn(cables, 'a cable', ['cables']),
  ...namedIn(sheets, 'a sheet', ['sheets']),
  ...namedIn(kit, 'a unit', ['kit']),
  ...namedIn(buses, 'a bus', ['buses']),
  ...namedIn(joins, 'a join', ['joins']),
  ...namedIn(supply.banks, 'a bank', ['supply', 'banks']),
  ...namedIn(supply.panels, 'a panel', ['supply', 'panels']),
  ...supply.panels.flatMap((panel, at) => namedIn(panel.circuits, 'a circuit', ['supply', 'panels', at, 'circuits'])),
  ...namedIn(supply.dcdc, 'a DC converter', ['supply', 'dcdc']),
  ...namedIn(supply.chargers ?? [], 'a charger', ['supply', 'chargers']),
  ...namedIn(days, 'a day', ['days']),
  ...namedIn(openings, 'an opening', ['openings']),
];

/** Every id that is taken in a boat. */
export const takenIds = (boat: Lists): ReadonlySet<string> => new Set(everyId(boat).map((named) => named.id));

/** The id itself where it is not taken, else the first of `id-2`, `id-3` … that is free. */
export const freeAmong = (taken: ReadonlySet<string>, id: string): string => {
  if (!taken.has(id)) return id;
  let at = 2;
  while (taken.has(`${id}-${at}`)) at += 1;
  return `${id}-${at}`;
};

/** The id itself where nothing in the boat has it, else the first of `id-2`, `id-3` … that is free. */
export const freeId = (boat: Lists, id: string): string => freeAmong(takenIds(boat), id);
