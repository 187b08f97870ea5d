import type { BoatIndex } from '../boat-index.ts';
import type { BoatProblem } from '../boat-problem.ts';
import type { Boat, Cable } from '../boat-schema.ts';
import { splitDotted } from '../ids.ts';
import type { FilePath } from '../place-in-file.ts';

interface Found {
  has(id: string): boolean;
  keys(): Iterable<string>;
}

const namesIn = (known: Found): Iterable<string> => ({ [Symbol.iterator]: () => known.keys()[Symbol.iterator]() });

/** Says that a reference leads to nothing, or nothing at all when it leads somewhere. */
export const linkTo = (
  known: Found,
  { id, what, owner, path }: { id: string; what: string; owner?: string; path: FilePath },
): BoatProblem[] =>
  known.has(id)
    ? []
    : [
        {
          path,
          says: `There is no ${what} "${id}"${owner === undefined ? '' : ` of "${owner}"`}.`,
          near: { given: id, known: namesIn(known) },
          whatToDo: `Name a ${what} of this file, or add it.`,
        },
      ];

/** Ids found in any of several places. */
export const anyOf = (...known: Found[]): Found => ({
  has: (id) => known.some((one) => one.has(id)),
  keys: () => known.flatMap((one) => [...one.keys()]),
});

/** Everything a reference may lead to. */
export interface Known {
  readonly index: BoatIndex;
  readonly sheets: Found;
  readonly circuits: Found;
  readonly dcdc: Found;
}

const idsOf = (list: readonly { readonly id: string }[]): ReadonlySet<string> => new Set(list.map((entry) => entry.id));

/** Gathers what references in a boat may lead to. */
export const knownIn = (index: BoatIndex): Known => ({
  index,
  sheets: idsOf(index.boat.sheets),
  circuits: idsOf(index.boat.supply.panels.flatMap((panel) => panel.circuits)),
  dcdc: idsOf(index.boat.supply.dcdc),
});

const portsOf = (index: BoatIndex, kit: string): ReadonlySet<string> => idsOf(index.sheetOf.get(kit)?.ports ?? []);

/** Says that a unit or its port is not there. */
export const linkToPort = (index: BoatIndex, { kit, port, path }: { kit: string; port: string; path: FilePath }) => {
  const noUnit = linkTo(index.kit, { id: kit, what: 'unit', path });
  return noUnit.length > 0 ? noUnit : linkTo(portsOf(index, kit), { id: port, what: 'port', owner: kit, path });
};

const checkEnd = ({ index, dcdc }: Known, end: Cable['from'], path: FilePath): BoatProblem[] => {
  const place = linkTo(index.places, { id: end.place, what: 'place', path: [...path, 'place'] });
  if (end.at === undefined) return place;
  const at = [...path, 'at'];
  if (!end.at.includes('.')) {
    const ends = anyOf(index.banks, index.panels, dcdc, index.buses);
    return [...place, ...linkTo(ends, { id: end.at, what: 'bank, panel or bus', path: at })];
  }
  const { kit: owner, part } = splitDotted(end.at);
  const panel = index.panels.get(owner);
  if (panel !== undefined) {
    return [...place, ...linkTo(idsOf(panel.circuits), { id: part, what: 'circuit', owner, path: at })];
  }
  const noUnit = linkTo(index.kit, { id: owner, what: 'unit', path: at });
  const plugs = idsOf(index.sheetOf.get(owner)?.plugs ?? []);
  return [...place, ...(noUnit.length > 0 ? noUnit : linkTo(plugs, { id: part, what: 'plug', owner, path: at }))];
};

const checkCable = (known: Known, cable: Cable, path: FilePath): BoatProblem[] => {
  const { index, circuits } = known;
  const served = anyOf(index.joins, index.buses, circuits);
  return [
    ...checkEnd(known, cable.from, [...path, 'from']),
    ...checkEnd(known, cable.to, [...path, 'to']),
    ...(cable.serves === undefined
      ? []
      : linkTo(served, { id: cable.serves, what: 'join, bus or circuit', path: [...path, 'serves'] })),
    ...cable.ways.flatMap((id, at) => linkTo(index.ways, { id, what: 'way', path: [...path, 'ways', at] })),
  ];
};

const checkWays = ({ ways }: Boat, index: BoatIndex): BoatProblem[] =>
  ways.flatMap((way, at) => {
    const path = ['ways', at, 'ends'];
    const missing = way.ends.flatMap((id, end) => linkTo(index.places, { id, what: 'place', path: [...path, end] }));
    if (way.ends[0] !== way.ends[1]) return missing;
    const says = `The way "${way.id}" starts and ends at one place.`;
    return [...missing, { path, says, whatToDo: 'Name the two places it joins, or take it out.' }];
  });

const checkInstances = (boat: Boat, index: BoatIndex): BoatProblem[] =>
  boat.kit.flatMap((unit, unitAt) => {
    const seen = new Set<string>();
    return (unit.instances ?? []).flatMap((entry, at) => {
      const path = ['kit', unitAt, 'instances', at];
      const missing = linkToPort(index, { kit: unit.id, port: entry.port, path: [...path, 'port'] });
      const key = `${entry.port} ${entry.reading}`;
      if (!seen.has(key)) {
        seen.add(key);
        return missing;
      }
      const says = `The instance of ${entry.reading} at port "${entry.port}" is given twice.`;
      return [...missing, { path, says, whatToDo: 'Take one of the two out.' }];
    });
  });

/** A bus is earthed at places, a cable at the units it joins. */
const checkShields = (boat: Boat, index: BoatIndex): BoatProblem[] => [
  ...boat.buses.flatMap(({ shieldAt = [] }, at) =>
    shieldAt.flatMap((id, shield) =>
      linkTo(index.places, { id, what: 'place', path: ['buses', at, 'shieldAt', shield] }),
    ),
  ),
  ...boat.joins.flatMap(({ id: join, members, shieldAt = [] }, at) => {
    const units = new Set(members.map(({ kit }) => kit));
    return shieldAt.flatMap((id, shield) =>
      linkTo(units, { id, what: 'unit', owner: join, path: ['joins', at, 'shieldAt', shield] }),
    );
  }),
];

const checkPins = (boat: Boat, index: BoatIndex): BoatProblem[] => [
  ...checkLayoutPins(boat, index),
  ...Object.entries(boat.pins?.routes ?? {}).flatMap(([line, { ways }]) =>
    ways.flatMap((id, at) => linkTo(index.ways, { id, what: 'way', path: ['pins', 'routes', line, 'ways', at] })),
  ),
  ...Object.keys(boat.pins?.fuses ?? {}).flatMap((named) => {
    const { kit: panel, part: circuit } = splitDotted(named);
    const circuits = new Map((index.panels.get(panel)?.circuits ?? []).map((entry) => [entry.id, entry]));
    const path = ['pins', 'fuses', named];
    const missing = linkTo(index.panels, { id: panel, what: 'panel', path });
    return missing.length > 0 ? missing : linkTo(circuits, { id: circuit, what: 'circuit', path });
  }),
];

const checkLayoutPins = (boat: Boat, index: BoatIndex): BoatProblem[] =>
  Object.entries(boat.pins?.layouts ?? {}).flatMap(([bus, layout]) => {
    const path = ['pins', 'layouts', bus];
    return [
      ...linkTo(index.buses, { id: bus, what: 'bus', path }),
      ...layout.walk.flatMap((step, at) => [
        ...linkTo(index.places, { id: step.place, what: 'place', path: [...path, 'walk', at, 'place'] }),
        ...(step.via === undefined
          ? []
          : linkTo(index.ways, { id: step.via, what: 'way', path: [...path, 'walk', at, 'via'] })),
      ]),
    ];
  });

/** References outside sheets, joins and supply that lead to nothing. The sheets of units are told of by checkUnits. */
export const checkLinks = (known: Known): BoatProblem[] => {
  const { index } = known;
  const { boat } = index;
  return [
    ...(boat.hull.masts ?? []).flatMap(({ foot }, at) =>
      linkTo(index.places, { id: foot, what: 'place', path: ['hull', 'masts', at, 'foot'] }),
    ),
    ...checkWays(boat, index),
    ...boat.cables.flatMap((cable, at) => checkCable(known, cable, ['cables', at])),
    ...boat.kit.flatMap((unit, at) =>
      linkTo(index.places, { id: unit.place, what: 'place', path: ['kit', at, 'place'] }),
    ),
    ...checkShields(boat, index),
    ...checkInstances(boat, index),
    ...boat.needs.flatMap((need, at) => linkTo(index.kit, { id: need.at, what: 'unit', path: ['needs', at, 'at'] })),
    ...checkPins(boat, index),
  ];
};
