import type { Boat, Place } from '../../../../core/boat/boat-schema.ts';
import type { EditCall } from '../../../../core/boat/history.ts';
import type { Shift } from './place-hand.ts';
import { axesOf, type SheetViewName } from './view-axes.ts';

export const noShift: Shift = { xM: 0, yM: 0, zM: 0 };

/** Places as they would stand so far away. */
export const shifted = (place: Place, { xM, yM, zM }: Shift): Place => ({
  ...place,
  xM: place.xM + xM,
  yM: place.yM + yM,
  zM: place.zM + zM,
});

/** A shift of the two measures that a view shows. */
export const shiftIn = (view: SheetViewName, by: { readonly alongM: number; readonly acrossM: number }): Shift => {
  const [along, across] = axesOf(view);
  return { ...noShift, [along]: by.alongM, [across]: by.acrossM };
};

/** The edit that moves places so far: only the measures that change. */
export const moveEdit = (boat: Boat, ids: ReadonlySet<string>, shift: Shift): EditCall => ({
  edit: 'move-places',
  params: {
    places: boat.places
      .filter(({ id }) => ids.has(id))
      .map((place) => {
        const { id, xM, yM, zM } = shifted(place, shift);
        return {
          place: id,
          ...(shift.xM === 0 ? {} : { xM }),
          ...(shift.yM === 0 ? {} : { yM }),
          ...(shift.zM === 0 ? {} : { zM }),
        };
      }),
  },
});
