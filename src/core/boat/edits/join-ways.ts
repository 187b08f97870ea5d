import type { Draft } from 'mutative';
import * as z from 'zod';
import type { Boat, Way } from '../boat-schema.ts';
import { byCodeUnit, idSchema } from '../ids.ts';
import { UserError } from '../user-error.ts';
import { asOneWay } from './as-one-way.ts';
import { defineEdit } from './define-edit.ts';
import { fewInWords } from './few-in-words.ts';
import { findInBoat } from './find-in-boat.ts';
import { nameInBoat } from './name-in-boat.ts';
import { standingAt } from './standing-at.ts';

const farEnd = ({ ends }: Way, place: string): string => (ends[0] === place ? ends[1] : ends[0]);

/** The two ways over a place, the one that keeps its id first; throws UserError where it is not passed so. */
const waysOver = (boat: Draft<Boat>, place: string): readonly [Way, Way] => {
  const { name } = findInBoat(boat.places, place, 'place');
  const [one, other, ...more] = boat.ways
    .filter(({ ends }) => ends.includes(place))
    .sort((a, b) => byCodeUnit(a.id, b.id));
  if (one === undefined || other === undefined || more.length > 0 || farEnd(one, place) === farEnd(other, place)) {
    throw new UserError({
      says: `${name} does not lie between two ways that could be one.`,
      whatToDo: 'Choose a place that is passed by one way in and another out.',
    });
  }
  const standing = standingAt(boat, place);
  if (standing.length > 0) {
    throw new UserError({
      says: `${name} is more than a point of a way: ${fewInWords(standing)}.`,
      whatToDo: 'Move that to another place first.',
    });
  }
  return [one, other];
};

const onceEach = (ids: readonly string[], { from, to }: { from: string; to: string }): string[] => [
  ...new Set(ids.map((id) => (id === from ? to : id))),
];

/** Whatever went through one or both goes through the one that is left; settled trunks no longer stop at the place. */
const leadThrough = (boat: Draft<Boat>, place: string, turned: { from: string; to: string }): void => {
  for (const cable of boat.cables) if (cable.ways.includes(turned.from)) cable.ways = onceEach(cable.ways, turned);
  for (const route of Object.values(boat.pins?.routes ?? {})) {
    if (route.ways.includes(turned.from)) route.ways = onceEach(route.ways, turned);
  }
  for (const layout of Object.values(boat.pins?.layouts ?? {})) {
    if (!layout.walk.some((step) => step.place === place)) continue;
    layout.walk = layout.walk
      .filter((step) => step.place !== place)
      .map((step) => (step.via === turned.from ? { ...step, via: turned.to } : step));
  }
};

/** Makes one way of the two over a place where nothing stands, and takes the place out. */
export const joinWays = defineEdit({
  id: 'join-ways',
  params: z.strictObject({ place: idSchema }),
  title: ({ place }, boat) => `Make one way of the two over ${nameInBoat(boat.places, place)}.`,
  change: (boat, { place }) => {
    const [one, other] = waysOver(boat, place);
    const joined = asOneWay(one, other, [farEnd(one, place), farEnd(other, place)]);
    boat.places = boat.places.filter(({ id }) => id !== place);
    boat.ways = boat.ways.flatMap((way) => (way.id === one.id ? [joined] : way.id === other.id ? [] : [way]));
    leadThrough(boat, place, { from: other.id, to: one.id });
  },
});
