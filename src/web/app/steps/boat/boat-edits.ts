import type { Boat, Place, Way } from '../../../../core/boat/boat-schema.ts';
import type { EditCall } from '../../../../core/boat/history.ts';
import { idForName } from '../../../../core/boat/id-of-name.ts';
import type { Axis } from './view-axes.ts';
import { words } from './words.ts';

/** Something new on the boat: the edit that makes it, and its id. */
export interface NewThing {
  readonly edit: EditCall;
  readonly id: string;
}

const toCentimetre = (valueM: number): number => Math.round(valueM * 100) / 100;

/** A name for a new place that no other place has. */
const newName = ({ places }: Boat): string => {
  const taken = new Set(places.map(({ name }) => name));
  let number = 1;
  while (taken.has(words.newPlace(number))) number += 1;
  return words.newPlace(number);
};

/** A new place where somebody pressed; what the view does not show is taken amidships: on the centreline, a little above the water. */
export const newPlace = (boat: Boat, at: Partial<Record<Axis, number>>): NewThing => {
  const name = newName(boat);
  const id = idForName(boat, name, 'place');
  const spot = { xM: boat.hull.lengthM / 2, yM: 0, zM: 0.5, ...at };
  const params: Place = {
    id,
    name,
    xM: toCentimetre(spot.xM),
    yM: toCentimetre(spot.yM),
    zM: toCentimetre(spot.zM),
    exposure: 'dry',
    reach: 'panel',
    tees: false,
  };
  return { id, edit: { edit: 'add-place', params } };
};

/** A new way between two places, its length guessed. */
export const newWay = (boat: Boat, ends: readonly [string, string]): NewThing => {
  const id = idForName(boat, ends.join('-'), 'place');
  return { id, edit: { edit: 'add-way', params: { id, ends: [...ends] } } };
};

/** Names as owners give them run on after a comma. */
const firstWords = (name: string): string => name.split(',')[0] ?? name;

/** A new place in a way, as far along it as `share` of the straight line. */
export const newSplit = (boat: Boat, way: Way, share: number): NewThing | undefined => {
  const [one, other] = way.ends.map((end) => boat.places.find(({ id }) => id === end));
  if (one === undefined || other === undefined) return undefined;
  const name = words.betweenPlace(firstWords(one.name), firstWords(other.name)).slice(0, 200);
  const id = idForName(boat, name, 'place');
  const along = (from: number, to: number): number => toCentimetre(from + (to - from) * share);
  const place = { id, name, xM: along(one.xM, other.xM), yM: along(one.yM, other.yM), zM: along(one.zM, other.zM) };
  return { id, edit: { edit: 'split-way', params: { way: way.id, place } } };
};
