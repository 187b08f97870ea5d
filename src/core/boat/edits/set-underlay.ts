import type { Boat } from '../boat-schema.ts';
import { type UnderlayView, underlaySchema } from '../underlay.ts';
import { defineEdit } from './define-edit.ts';

export const viewWords = { side: 'from the side', top: 'from above' } as const satisfies Record<UnderlayView, string>;

const held = (boat: Boat, view: UnderlayView): string | undefined =>
  boat.underlays?.find((entry) => entry.view === view)?.picture.hash;

/** Lays a picture under one view, in place of the one that was there, or lays the same one otherwise. */
export const setUnderlay = defineEdit({
  id: 'set-underlay',
  params: underlaySchema,
  title: ({ view, picture, hidden }, boat) => {
    if (held(boat, view) !== picture.hash) return `Put a picture under the boat ${viewWords[view]}.`;
    const wasHidden = boat.underlays?.find((entry) => entry.view === view)?.hidden === true;
    if (wasHidden !== (hidden === true)) return `${hidden === true ? 'Hide' : 'Show'} the picture ${viewWords[view]}.`;
    return `Fit the picture ${viewWords[view]}.`;
  },
  change: (boat, underlay) => {
    boat.underlays = [...(boat.underlays ?? []).filter(({ view }) => view !== underlay.view), underlay];
  },
});
