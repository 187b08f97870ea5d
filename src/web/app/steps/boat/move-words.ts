import type { Boat } from '../../../../core/boat/boat-schema.ts';
import { shortName } from '../../../../core/boat/short-name.ts';
import { straightLineM } from '../../../../core/boat/straight-line.ts';
import { shifted } from './moved-places.ts';
import type { Shift } from './place-hand.ts';
import { type Caught, neighboursOf } from './snap.ts';
import { words } from './words.ts';

/** So many distances can be read while something moves. */
const mostSaid = 4;

/** What is said of places on their way: where the first would stand, what it holds on to, how far its neighbours are. */
export const moveWords = ({
  boat,
  ids,
  shift,
  held,
  caught,
}: {
  readonly boat: Boat;
  readonly ids: ReadonlySet<string>;
  readonly shift: Shift;
  /** the one that the hand holds */
  readonly held: string;
  readonly caught?: Caught | undefined;
}): string => {
  const found = boat.places.find(({ id }) => id === held);
  if (found === undefined) return '';
  const place = shifted(found, shift);
  const near = neighboursOf(boat, held)
    .map((other) => ({
      name: shortName(other.name),
      straightM: straightLineM(place, ids.has(other.id) ? shifted(other, shift) : other),
    }))
    .sort((a, b) => a.straightM - b.straightM)
    .slice(0, mostSaid);
  const name = ids.size > 1 ? `${shortName(place.name)} ${words.movedTogether(ids.size - 1)}` : shortName(place.name);
  return [
    words.where(name, place),
    ...(caught === undefined
      ? []
      : [caught.what === 'height' ? words.asHighAs(shortName(caught.of)) : words.onCentreline]),
    ...(near.length === 0
      ? []
      : [words.straight(near.map((one) => words.straightTo(one.name, one.straightM)).join(', '))]),
  ].join(' ');
};
