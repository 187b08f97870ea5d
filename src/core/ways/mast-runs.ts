import type { BoatIndex } from '../boat/boat-index.ts';
import type { Place, Way } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { mastWork } from '../facts/mast-work.ts';
import type { BusEntry, LineEntry, MastEntry } from '../plan-shape.ts';
import { gramsPerM, weightKg } from './cable-weight.ts';
import { drawnCable } from './way-fills.ts';
import { type WayLength, wayLengths } from './way-lengths.ts';

/** One mast: the ways inside it, its foot and its top. */
interface Mast {
  readonly foot: Place;
  readonly top: Place;
  readonly ways: ReadonlySet<string>;
}

const isDry = ({ exposure, reach }: Place): boolean =>
  (exposure === 'dry' || exposure === 'damp') && (reach === 'open' || reach === 'panel');

/** Ways of kind `mast` that hang together, each with its lowest and highest place. */
const mastsOf = (index: BoatIndex): Mast[] => {
  const left = index.boat.ways.filter(({ kind }) => kind === 'mast').sort((one, other) => byCodeUnit(one.id, other.id));
  const masts: Mast[] = [];
  for (let first = left.shift(); first !== undefined; first = left.shift()) {
    const own: Way[] = [first];
    for (const way of own) {
      for (const next of left.filter(({ ends }) => ends.some((end) => way.ends.includes(end)))) {
        own.push(next);
        left.splice(left.indexOf(next), 1);
      }
    }
    const places = own
      .flatMap(({ ends }) => ends)
      .flatMap((id) => index.places.get(id) ?? [])
      .sort((one, other) => one.zM - other.zM || byCodeUnit(one.id, other.id));
    const [foot, top] = [places[0], places.at(-1)];
    if (foot !== undefined && top !== undefined) masts.push({ foot, top, ways: new Set(own.map(({ id }) => id)) });
  }
  return masts;
};

/** The way by which a mast is entered from below deck, if its foot stands on deck. */
const throughDeck = (index: BoatIndex, { foot, ways }: Mast): Way | undefined =>
  index.boat.ways
    .filter(({ id, through, ends }) => through === 'deck' && !ways.has(id) && ends.includes(foot.id))
    .sort((one, other) => byCodeUnit(one.id, other.id))[0];

/**
 * Where the cables of a mast are parted, so that it can be taken down: at the foot where that is dry and within reach, else
 * at the nearest end of a way from there that is. Absent where every place round the foot is wet or shut.
 */
const breakPlace = (index: BoatIndex, { foot, ways }: Mast): Place | undefined => {
  if (isDry(foot)) return foot;
  return index.boat.ways
    .filter(({ id, ends }) => !ways.has(id) && ends.includes(foot.id))
    .flatMap(({ ends, length }) => {
      const place = index.places.get(ends[0] === foot.id ? ends[1] : ends[0]);
      return place === undefined ? [] : [{ place, lengthM: length.valueM }];
    })
    .filter(({ place }) => isDry(place))
    .sort((one, other) => one.lengthM - other.lengthM || byCodeUnit(one.place.id, other.place.id))[0]?.place;
};

const stepOf = (index: BoatIndex, mast: Mast): Pick<MastEntry, 'stepped' | 'stepKnown'> => {
  const told = index.boat.hull.masts?.find(({ foot }) => foot === mast.foot.id);
  if (told !== undefined) return { stepped: told.stepped, stepKnown: true };
  // A mast that stands on deck has its cables come up through a gland beside it.
  return { stepped: throughDeck(index, mast) === undefined ? 'keel' : 'deck', stepKnown: false };
};

const aloftMm = (lengths: ReadonlyMap<string, WayLength>, mast: Mast, line: LineEntry): number =>
  line.ways.reduce((sum, way) => (mast.ways.has(way) ? sum + (lengths.get(way)?.longestMm ?? 0) : sum), 0);

/**
 * What runs in each mast: its new cables with their length inside it at its longest and their weight, where they are parted
 * at the foot, and how often they are held. Masts without a new cable are left out. Sorted by foot.
 */
export const mastRuns = ({
  index,
  lines,
  buses,
}: {
  readonly index: BoatIndex;
  readonly lines: readonly LineEntry[];
  readonly buses: readonly Pick<BusEntry, 'id' | 'grade'>[];
}): MastEntry[] => {
  const lengths = wayLengths({ ways: index.boat.ways, places: index.places });
  const entryOf = (mast: Mast): MastEntry[] => {
    const runs = lines
      .filter(({ kept }) => kept === undefined)
      .flatMap((line) => {
        const mm = aloftMm(lengths, mast, line);
        if (mm === 0) return [];
        const perM = gramsPerM(drawnCable(line, buses).outsideMm);
        return [{ line: line.id, aloftM: mm / 1000, weightKg: weightKg({ gramsPerM: perM, lengthM: mm / 1000 }) }];
      });
    if (runs.length === 0) return [];
    const parted = breakPlace(index, mast);
    const longestM = Math.max(...runs.map(({ aloftM }) => aloftM));
    return [
      {
        foot: mast.foot.id,
        top: mast.top.id,
        ...stepOf(index, mast),
        heightM: mast.top.zM - mast.foot.zM,
        ...(parted === undefined ? {} : { breakAt: parted.id }),
        lines: runs,
        weightKg: runs.reduce((sum, run) => sum + run.weightKg, 0),
        holds: Math.ceil(longestM / mastWork.holdEvery.value),
      },
    ];
  };
  return mastsOf(index)
    .flatMap(entryOf)
    .sort((one, other) => byCodeUnit(one.foot, other.foot));
};
