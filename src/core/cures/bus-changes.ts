import type { Layout, Problem } from '../backbone/problem.ts';
import type { BoatIndex } from '../boat/boat-index.ts';
import type { GradeId, Place } from '../boat/boat-schema.ts';
import { byCodeUnit, splitDotted } from '../boat/ids.ts';
import type { PriceList } from '../shopping/price-list.ts';
import { makeRouter } from '../ways/routes.ts';
import type { Candidate } from './candidate.ts';
import { splitChanges } from './split-bus.ts';

/** A change that may give a bus a layout, not tried yet. */
export interface BusChange extends Omit<Candidate, 'cost'> {
  /** the buses it touches */
  readonly buses: readonly string[];
  /** new parts besides those of the buses, in hundredths */
  readonly partsCost: number;
}

export interface BusChangeTask {
  readonly index: BoatIndex;
  readonly prices: PriceList;
  readonly problem: Problem;
  /** the layout that breaks the limits least */
  readonly layout: Layout;
  /** what that layout breaks, in words */
  readonly broken: readonly string[];
}

const gradesUp: readonly GradeId[] = ['light', 'mid', 'heavy'];

/** A heavier trunk than the one the boat file asks for. */
const heavierTrunk = ({ index, problem: { bus } }: BusChangeTask): BusChange[] => {
  const own = index.buses.get(bus);
  if (own?.grade === undefined) return [];
  const heavier = gradesUp.slice(gradesUp.lastIndexOf(own.grade) + 1);
  return heavier.map((grade) => ({
    says: `Lay ${own.name} in ${grade} cable.`,
    edits: [{ edit: 'set-grade', params: { bus, grade } }],
    buses: [bus],
    partsCost: 0,
  }));
};

/** How many units are moved on trial, and to how many places each. */
const moved = { units: 4, places: 2 } as const;
/** Kinds that stand where they must: what sees the sky, feels the wind or reaches the water. */
const fixedKinds = /antenna|sensor|transducer|radar|camera/;

/** Units named in what the nearest layout breaks; where none is, those farthest from the feed. */
const unitsInTheWay = ({ problem, layout, index, broken }: BusChangeTask): string[] => {
  const ports = problem.devices.map(({ id }) => id);
  const named = ports.filter((port) => broken.some((says) => says.includes(port)));
  const at = new Map(layout.walk.flatMap(({ tees }, step) => tees.map((tee): [string, number] => [tee, step])));
  const feed = at.get('feed') ?? 0;
  const far = [...ports].sort(
    (one, other) =>
      Math.abs((at.get(other) ?? 0) - feed) - Math.abs((at.get(one) ?? 0) - feed) || byCodeUnit(one, other),
  );
  const units = [...named, ...far].map((port) => splitDotted(port).kit);
  const mayMove = (kit: string): boolean => !fixedKinds.test(index.sheetOf.get(kit)?.kind ?? '');
  return [...new Set(units)].filter(mayMove).slice(0, moved.units);
};

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

/** A unit in the way moved to a place near that is as dry as it needs. */
const moveUnits = (task: BusChangeTask, units: readonly string[]): BusChange[] =>
  units.flatMap((unit) => {
    const { kit } = task.index;
    const own = kit.get(unit);
    if (own === undefined) return [];
    return placesNear(task.index, own.place, (place) => isDry(place) || place.tees)
      .slice(0, moved.places)
      .map((place) => ({
        says: `Move ${own.name} to ${place.name}.`,
        edits: [{ edit: 'move-unit' as const, params: { unit, place: place.id } }],
        buses: [task.problem.bus],
        partsCost: 0,
      }));
  });

/** Tees at a dry place near a unit in the way, where none may stand now. */
const moreTees = (task: BusChangeTask, units: readonly string[]): BusChange[] => {
  const near = units.flatMap((unit) => {
    const from = task.index.kit.get(unit)?.place ?? '';
    const here = task.index.places.get(from);
    const others = placesNear(task.index, from, (place) => !place.tees && isDry(place));
    return [...(here !== undefined && !here.tees && isDry(here) ? [here] : []), ...others].slice(0, moved.places);
  });
  return [...new Map(near.map((place) => [place.id, place])).values()].map((place) => ({
    says: `Let tees stand at ${place.name}.`,
    edits: [{ edit: 'allow-tees', params: { place: place.id, tees: true } }],
    buses: [task.problem.bus],
    partsCost: 0,
  }));
};

/** Single changes that may give a bus a layout, the plainest first. */
export const busChanges = (task: BusChangeTask): BusChange[] => {
  const units = unitsInTheWay(task);
  return [...heavierTrunk(task), ...moreTees(task, units), ...moveUnits(task, units), ...splitChanges(task)];
};
