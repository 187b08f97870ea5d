import type { BoatIndex } from '../boat/boat-index.ts';
import type { Place, Way } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { keptFor } from '../boat/kept-for.ts';

/** One mast: the ways inside it, its foot and its top. */
export interface Mast {
  readonly foot: Place;
  readonly top: Place;
  readonly ways: ReadonlySet<string>;
}

const isDry = ({ exposure, reach }: Place): boolean =>
  (exposure === 'dry' || exposure === 'damp') && (reach === 'open' || reach === 'panel');

/** Ways of kind `mast` that hang together, each with its lowest and highest place. */
export const mastsOf = keptFor((index: BoatIndex): readonly Mast[] => {
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
});

/**
 * Where the cables of a mast are parted, so that it can be taken down: at the foot where that is dry and within reach, else
 * at the nearest end of a way from there that is. Absent where every place round the foot is wet or shut.
 */
export const breakPlace = (index: BoatIndex, { foot, ways }: Mast): Place | undefined => {
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
