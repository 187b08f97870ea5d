import type { Draft } from 'mutative';
import * as z from 'zod';
import type { Boat } from '../boat-schema.ts';
import type { Fitted } from '../fitted.ts';
import { idSchema } from '../ids.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { withoutPin } from './without-pin.ts';

/** Where in the pins a difference of each kind is settled. */
const pinOf = { length: 'pieces', route: 'routes', wire: 'wires', fuse: 'fuses' } as const;

/** A unit goes back where it was planned, if it stands where the difference says and that place is still there. */
const moveBack = (boat: Draft<Boat>, { about, was, is }: Fitted): void => {
  const nameAt = (place: string): string | undefined => boat.places.find(({ id }) => id === place)?.name;
  const unit = boat.kit.find(({ id }) => id === about);
  const planned = boat.places.find(({ name }) => name === was);
  if (unit !== undefined && planned !== undefined && nameAt(unit.place) === is) unit.place = planned.id;
};

/** What the boat file was made to say by a difference; what holds a line to it only where a person settled it as fitted. */
const letGo = (boat: Draft<Boat>, fitted: Fitted): void => {
  const { what, about } = fitted;
  if (what === 'place') moveBack(boat, fitted);
  else if (what !== 'other' && boat.pins?.[pinOf[what]]?.[about]?.state === 'fitted') {
    withoutPin(boat, pinOf[what], about);
  }
};

/**
 * Takes a difference back that was noted by mistake, with what the boat file was made to say by it, so that the plan chooses
 * again. Where the same thing was noted more than once only the note goes: what stands in the file may be of another.
 */
export const takeBackFitted = defineEdit({
  id: 'take-back-fitted',
  params: z.strictObject({ id: idSchema }),
  title: ({ id }, boat) => {
    const noted = boat.fitted?.find((one) => one.id === id);
    return `Take back that ${noted?.about ?? id} was found otherwise.`;
  },
  change: (boat, { id }) => {
    const before = boat.fitted ?? [];
    const noted = findInBoat(before, id, 'difference');
    const left = before.filter((one) => one.id !== id);
    if (!left.some(({ what, about }) => what === noted.what && about === noted.about)) letGo(boat, { ...noted });
    if (left.length > 0) boat.fitted = left;
    else delete boat.fitted;
  },
});
