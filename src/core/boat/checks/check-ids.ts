import type { BoatProblem } from '../boat-problem.ts';
import type { Boat } from '../boat-schema.ts';
import type { FilePath } from '../place-in-file.ts';

interface Named {
  readonly id: string;
  readonly what: string;
  readonly path: FilePath;
}

const namedIn = (list: readonly { readonly id: string }[], what: string, path: FilePath): Named[] =>
  list.map((entry, at) => ({ id: entry.id, what, path: [...path, at] }));

const everyId = ({ places, ways, cables, sheets, kit, buses, joins, supply }: Boat): Named[] => [
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
];

/** Ids given twice anywhere in the file, whatever they name. */
export const checkIds = (boat: Boat): BoatProblem[] => {
  const seen = new Map<string, Named>();
  const problems: BoatProblem[] = [];
  for (const named of everyId(boat)) {
    const first = seen.get(named.id);
    if (first === undefined) {
      seen.set(named.id, named);
      continue;
    }
    const both = first.what === named.what ? `${named.what} twice` : `${first.what} and of ${named.what}`;
    problems.push({
      path: [...named.path, 'id'],
      says: `"${named.id}" is the id of ${both}; an id names one thing in the whole file.`,
      whatToDo: 'Give one of the two another id, also where it is referred to.',
    });
  }
  return problems;
};
