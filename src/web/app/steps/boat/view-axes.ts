import type { Place } from '../../../../core/boat/boat-schema.ts';

export type SheetViewName = 'side' | 'top' | 'astern';
export type Axis = 'xM' | 'yM' | 'zM';

const axes = {
  side: ['xM', 'zM'],
  top: ['xM', 'yM'],
  astern: ['yM', 'zM'],
} as const satisfies Record<SheetViewName, readonly [Axis, Axis]>;

/** Which two of its three measures a view shows of a place: across the sheet, and up or down it. */
export const axesOf = (view: SheetViewName): readonly [along: Axis, across: Axis] => axes[view];

/** The two measures that a view shows of a place. */
export const seenOf = (
  view: SheetViewName,
  place: Pick<Place, Axis>,
): { readonly alongM: number; readonly acrossM: number } => {
  const [along, across] = axes[view];
  return { alongM: place[along], acrossM: place[across] };
};

/** How far down the sheet is farther along the second measure: starboard lies below, height above. */
export const downOf = (view: SheetViewName): 1 | -1 => (view === 'top' ? 1 : -1);
