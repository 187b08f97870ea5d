import type { Draft } from 'mutative';
import * as z from 'zod';
import { type Boat, type Place, placeSchema, type Way } from '../boat-schema.ts';
import { freeId } from '../every-id.ts';
import { idSchema } from '../ids.ts';
import type { Measure } from '../measure.ts';
import { straightLineM } from '../straight-line.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { toMillimetre } from './to-millimetre.ts';
import { wayInWords } from './way-in-words.ts';

const { id, name, xM, yM, zM, exposure, reach, tees, spares } = placeSchema.shape;

const middleSchema = z.strictObject({
  id,
  name,
  xM: z.exactOptional(xM),
  yM: z.exactOptional(yM),
  zM: z.exactOptional(zM),
  exposure: z.exactOptional(exposure),
  reach: z.exactOptional(reach),
  tees: z.exactOptional(tees),
  spares,
});

const between = (fromM: number, toM: number, share: number): number => toMillimetre(fromM + (toM - fromM) * share);

/** Two parts of a number that add up to it again: the first a whole number of millimetres or minutes, the other the rest. */
const shared = (value: number, share: number): readonly [number, number] => {
  const first = toMillimetre(value * share);
  return [first, Number((value - first).toFixed(9))];
};

const halves = ({ valueM, how, lessM, moreM }: Measure, share: number): readonly [Measure, Measure] => {
  const value = shared(valueM, share);
  const less = lessM === undefined ? undefined : shared(lessM, share);
  const more = moreM === undefined ? undefined : shared(moreM, share);
  const half = (at: 0 | 1): Measure => ({
    valueM: value[at],
    how,
    ...(less === undefined ? {} : { lessM: Math.min(less[at], value[at]) }),
    ...(more === undefined ? {} : { moreM: more[at] }),
  });
  return [half(0), half(1)];
};

/** How much of a way lies before a place in it, as the straight lines to it share it; the middle where it is no more than a point. */
const shareBefore = (one: Place, middle: Place, other: Place): number => {
  const [beforeM, afterM] = [straightLineM(one, middle), straightLineM(middle, other)];
  return beforeM + afterM === 0 ? 0.5 : beforeM / (beforeM + afterM);
};

/** Whatever went through the way goes through both halves; settled trunks pass the new place, which has no tee yet. */
const leadThrough = (boat: Draft<Boat>, way: Way, half: Way, place: string): void => {
  const [first] = way.ends;
  const both = (ids: readonly string[]): string[] => ids.flatMap((one) => (one === way.id ? [way.id, half.id] : [one]));
  for (const cable of boat.cables) if (cable.ways.includes(way.id)) cable.ways = both(cable.ways);
  for (const route of Object.values(boat.pins?.routes ?? {})) {
    if (route.ways.includes(way.id)) route.ways = both(route.ways);
  }
  for (const layout of Object.values(boat.pins?.layouts ?? {})) {
    if (!layout.walk.some(({ via }) => via === way.id)) continue;
    layout.walk = layout.walk.flatMap((step, at) => {
      if (step.via !== way.id) return [step];
      const forth = layout.walk[at - 1]?.place === first;
      const [before, after] = forth ? [way.id, half.id] : [half.id, way.id];
      return [
        { place, via: before, tees: [] },
        { ...step, via: after },
      ];
    });
  }
};

/**
 * Puts a place into a way: the way goes on to it from its first end, and a new one from it to the other end. Without
 * measures of its own the place lies halfway. The two share the length, its doubt and the hours of work; bore and all else
 * is that of both.
 */
export const splitWay = defineEdit({
  id: 'split-way',
  params: z.strictObject({ way: idSchema, place: middleSchema }),
  title: ({ way, place }, boat) => `Put ${place.name} into the way ${wayInWords(boat, way)}.`,
  change: (boat, { way: wayId, place }) => {
    const way = findInBoat(boat.ways, wayId, 'way');
    const [from, to] = way.ends;
    const one = findInBoat(boat.places, from, 'place');
    const other = findInBoat(boat.places, to, 'place');
    const middle: Place = {
      xM: between(one.xM, other.xM, 0.5),
      yM: between(one.yM, other.yM, 0.5),
      zM: between(one.zM, other.zM, 0.5),
      exposure: way.exposure ?? one.exposure,
      reach: 'panel',
      tees: false,
      ...place,
    };
    const share = shareBefore(one, middle, other);
    const [length, rest] = halves(way.length, share);
    const hours = way.hours === undefined ? undefined : shared(way.hours, share);
    boat.places.push(middle);
    const half: Way = {
      ...way,
      id: freeId(boat, `${wayId.slice(0, 58)}-2`),
      ends: [middle.id, to],
      length: rest,
      ...(hours === undefined ? {} : { hours: hours[1] }),
    };
    leadThrough(boat, way, half, middle.id);
    boat.ways.push(half);
    way.ends = [from, middle.id];
    way.length = length;
    if (hours !== undefined) way.hours = hours[0];
  },
});
