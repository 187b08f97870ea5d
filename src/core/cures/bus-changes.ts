import type { Layout, Problem } from '../backbone/problem.ts';
import type { BoatIndex } from '../boat/boat-index.ts';
import type { Boat, GradeId, Place, Way } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { cableGrades } from '../facts/cable-grades.ts';
import type { LayoutLimit } from '../facts/layout-limits.ts';
import type { PriceList } from '../prices/price-list.ts';
import { allowsLine, trunkTimes } from '../ways/allowed-lines.ts';
import { makeRouter } from '../ways/routes.ts';
import type { Candidate } from './candidate.ts';
import type { Clash } from './clash-words.ts';
import { splitChanges } from './split-bus.ts';
import { unitsInTheWay } from './units-in-the-way.ts';

/** A change that may give a bus a layout, not tried yet. */
export interface BusChange extends Omit<Candidate, 'cost'> {
  readonly kind: 'grade' | 'tees' | 'ends' | 'trunk' | 'move' | 'split';
  /** the buses it touches */
  readonly buses: readonly string[];
  /** new parts besides those of the buses, in hundredths */
  readonly partsCost: number;
  /** of changes with one name here the first that helps is enough */
  readonly insteadOf?: string;
  /** the unit that joins two buses, where it brings one */
  readonly bridge?: string;
  /** what it makes of the boat where no edit says it: a person then has to look and enter it */
  readonly byHand?: (boat: Boat) => Boat;
}

export interface BusChangeTask {
  readonly index: BoatIndex;
  readonly prices: PriceList;
  readonly problem: Problem;
  /** the layout that breaks the limits least; absent where no trunk can be laid */
  readonly layout: Layout | undefined;
  readonly clashes: readonly Clash[];
  /** ports on the bus that hear something from another port on it, each with what and from where */
  readonly hops: readonly BusHop[];
  /** every bus a unit is on, by unit */
  readonly busesOf: ReadonlyMap<string, readonly string[]>;
}

/** A reading on its way over a bus from one port to another. */
export interface BusHop {
  readonly reading: string;
  readonly from: string;
  readonly to: string;
}

const byWeight: readonly GradeId[] = ['light', 'mid', 'heavy', 'industrial-thick'];

/** A heavier trunk than any the boat file lets the plan choose. */
const heavierTrunk = ({ index, problem: { bus, grades } }: BusChangeTask): BusChange[] => {
  const heaviest = Math.max(...grades.map(({ id }) => byWeight.indexOf(id)));
  return byWeight.slice(heaviest + 1).map((grade) => ({
    kind: 'grade',
    says: `Lay ${index.buses.get(bus)?.name ?? bus} in ${cableGrades[grade].name} cable.`,
    edits: [{ edit: 'set-grade', params: { bus, grade } }],
    buses: [bus],
    partsCost: 0,
  }));
};

/** How many units are moved on trial, and to how many places each; how many places are given tees; how many ways the trunk. */
const tried = { units: 4, places: 4, tees: 6, ways: 4 } as const;

/** The places nearest to one by ways for drops, that suit. */
const placesNear = (index: BoatIndex, from: string, suits: (place: Place) => boolean): Place[] => {
  const router = makeRouter(index);
  return index.boat.places
    .flatMap((place) => {
      const route =
        place.id === from || !suits(place) ? undefined : router.between({ kind: 'drop', from, to: place.id });
      return route === undefined ? [] : [{ place, mm: route.mm }];
    })
    .sort((one, other) => one.mm - other.mm || byCodeUnit(one.place.id, other.place.id))
    .map(({ place }) => place);
};

const isDry = ({ exposure, reach }: Place): boolean =>
  (exposure === 'dry' || exposure === 'damp') && (reach === 'open' || reach === 'panel');

const wetness: readonly Place['exposure'][] = ['dry', 'damp', 'spray', 'weather'];

/** Whether what stands at one place could stand at another: as dry, and as easily reached and seen. */
const isAsGood = (other: Place, own: Place): boolean => {
  const [there, here] = [wetness.indexOf(other.exposure), wetness.indexOf(own.exposure)];
  const isAsDry = other.exposure === own.exposure || (there >= 0 && (here < 0 || there <= here));
  return isAsDry && (other.reach === 'open' || (other.reach === 'panel' && own.reach !== 'open'));
};

/** A unit in the way moved to the nearest place that is as good and helps. */
const moveUnits = ({ index, busesOf }: BusChangeTask, units: readonly string[]): BusChange[] =>
  units.slice(0, tried.units).flatMap((unit) => {
    const kit = index.kit.get(unit);
    const own = index.places.get(kit?.place ?? '');
    if (kit === undefined || own === undefined) return [];
    return placesNear(index, own.id, (place) => isAsGood(place, own))
      .slice(0, tried.places)
      .map((place) => ({
        kind: 'move' as const,
        says: `Move ${kit.name} from ${own.name} to ${place.name}.`,
        edits: [{ edit: 'move-unit' as const, params: { unit, place: place.id } }],
        buses: busesOf.get(unit) ?? [],
        partsCost: 0,
        insteadOf: unit,
      }));
  });

const unlike = <Entry extends { readonly id: string }>(entries: readonly Entry[]): Entry[] => [
  ...new Map(entries.map((entry) => [entry.id, entry])).values(),
];

/** Tees at a dry place near a unit in the way, where none may stand now. */
const moreTees = ({ index, problem: { bus } }: BusChangeTask, units: readonly string[]): BusChange[] => {
  const near = units.flatMap((unit) => {
    const here = index.places.get(index.kit.get(unit)?.place ?? '');
    const suits = (place: Place): boolean => !place.tees && isDry(place);
    const own = here !== undefined && suits(here) ? [here] : [];
    return [...own, ...placesNear(index, here?.id ?? '', suits)].slice(0, 2);
  });
  return unlike(near)
    .slice(0, tried.tees)
    .map((place) => ({
      kind: 'tees',
      says: `Let tees stand at ${place.name}.`,
      edits: [{ edit: 'allow-tees', params: { place: place.id, tees: true } }],
      buses: [bus],
      partsCost: 0,
    }));
};

/** A terminator where it is said to be out of reach. */
const moreEnds = ({ index, problem: { bus }, clashes }: BusChangeTask): BusChange[] => {
  const places = clashes.flat().flatMap(({ limit, at = [] }) => (limit === 'end-places' ? at : []));
  if (places.length === 0) return [];
  const names = places.map((place) => index.places.get(place)?.name ?? place).join(' and at ');
  return [
    {
      kind: 'ends',
      says: `Look whether a terminator at ${names} can be reached, by a hatch or a panel; if so, enter that.`,
      edits: [],
      buses: [bus],
      partsCost: 0,
      byHand: (boat) => ({
        ...boat,
        places: boat.places.map((place) => (places.includes(place.id) ? { ...place, reach: 'panel' } : place)),
      }),
    },
  ];
};

const allowingTrunk = (way: Way): Way => {
  const { allows, trunkTimes: _, ...own } = way;
  if (trunkTimes(way) > 0) return { ...way, trunkTimes: 2 };
  return { ...own, ...(allows === undefined ? {} : { allows: [...allows, 'trunk' as const] }) };
};

/** The trunk through a way near a unit in the way that does not take it now, or back through one it may pass once. */
const moreTrunk = ({ index, problem: { bus } }: BusChangeTask, units: readonly string[]): BusChange[] => {
  const places = new Set(units.map((unit) => index.kit.get(unit)?.place ?? ''));
  const touches = ({ ends }: Way): boolean => ends.some((end) => places.has(end));
  const shut = index.boat.ways.filter(
    (way) => trunkTimes(way) < 2 && (trunkTimes(way) === 1 || allowsLine(way, 'drop')),
  );
  const nameOf = (place: string): string => index.places.get(place)?.name ?? place;
  return shut
    .sort((one, other) => Number(touches(other)) - Number(touches(one)) || byCodeUnit(one.id, other.id))
    .slice(0, tried.ways)
    .map((way) => ({
      kind: 'trunk',
      says: `Look whether the trunk could run ${trunkTimes(way) === 1 ? 'out and back ' : ''}through ${way.id}, from ${nameOf(way.ends[0])} to ${nameOf(way.ends[1])}; if so, enter that it may.`,
      edits: [],
      buses: [bus],
      partsCost: 0,
      byHand: (boat) => ({
        ...boat,
        ways: boat.ways.map((entry) => (entry.id === way.id ? allowingTrunk(entry) : entry)),
      }),
    }));
};

/** What each kind of change can do nothing about. */
const helpless: Readonly<Record<BusChange['kind'], readonly LayoutLimit[]>> = {
  grade: ['device-count', 'one-drop', 'all-drops', 'tee-places', 'end-places'],
  tees: ['device-count'],
  ends: ['device-count', 'one-drop', 'tee-places', 'current', 'volts'],
  trunk: ['device-count'],
  move: ['device-count'],
  split: [],
};

/** One of each list in turn, so that where not all can be tried some of each kind are. */
const inTurn = <Value>(lists: readonly (readonly Value[])[]): Value[] =>
  Array.from({ length: Math.max(...lists.map((list) => list.length)) }, (_, turn) =>
    lists.flatMap((list) => list.slice(turn, turn + 1)),
  ).flat();

/** Single changes that may give a bus a layout, heavier cable first, then one of each other kind in turn; those left out that cannot help one of the clashes. */
export const busChanges = (task: BusChangeTask): BusChange[] => {
  const units = unitsInTheWay(task);
  const mayHelp = ({ kind }: BusChange): boolean =>
    task.clashes.every((clash) => clash.some(({ limit }) => !helpless[kind].includes(limit)));
  const changes = [
    moreTees(task, units),
    moreEnds(task),
    splitChanges(task),
    moveUnits(task, units),
    moreTrunk(task, units),
  ];
  const heavier = task.clashes.length === 0 ? [] : heavierTrunk(task);
  return [...heavier, ...inTurn(changes)].filter(mayHelp);
};
