import type { BoatIndex } from '../boat/boat-index.ts';
import type { Way } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { mastWork } from '../facts/mast-work.ts';
import type { BusEntry, LineEntry, MastEntry } from '../plan-shape.ts';
import { gramsPerM, weightKg } from './cable-weight.ts';
import { breakPlace, type Mast, mastsOf } from './masts.ts';
import { drawnCable } from './way-fills.ts';
import { type WayLength, wayLengths } from './way-lengths.ts';

/** The way by which a mast is entered from below deck, if its foot stands on deck. */
const throughDeck = (index: BoatIndex, { foot, ways }: Mast): Way | undefined =>
  index.boat.ways
    .filter(({ id, through, ends }) => through === 'deck' && !ways.has(id) && ends.includes(foot.id))
    .sort((one, other) => byCodeUnit(one.id, other.id))[0];

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
