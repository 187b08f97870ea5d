import { useSyncExternalStore } from 'react';
import type { Underlay, UnderlayView } from '../../../../core/boat/underlay.ts';
import type { PicturePoint } from '../../../../core/boat/underlay-placement.ts';
import type { Axis } from './view-axes.ts';

export const tools = ['move', 'place', 'way', 'split', 'points'] as const;
/** What a press on the drawing does. */
export type Tool = (typeof tools)[number];

/** How far some places are from where they stand, while somebody moves them. */
export type Shift = Readonly<Record<Axis, number>>;

/** What is in the hand: places on their way, a way that is drawn, a frame round places, a point of the picture. */
export type InHand =
  | { readonly kind: 'places'; readonly ids: ReadonlySet<string>; readonly shift: Shift }
  | { readonly kind: 'way'; readonly from: string; readonly to?: string }
  | {
      readonly kind: 'frame';
      readonly view: number;
      readonly from: readonly [number, number];
      readonly to: readonly [number, number];
      readonly count: number;
    }
  | { readonly kind: 'point'; readonly view: UnderlayView; readonly point: PicturePoint }
  | { readonly kind: 'underlay'; readonly underlay: Underlay };

export interface PlaceHand {
  readonly tool: Tool;
  readonly inHand: InHand | undefined;
  /** what is said of it */
  readonly says: string;
}

let now: PlaceHand = { tool: 'move', inHand: undefined, says: '' };
const listeners = new Set<() => void>();

const set = (next: PlaceHand): void => {
  now = next;
  for (const listener of listeners) listener();
};

/** Takes up a tool; there is one drawing on a page, and one hand on it. */
export const takeTool = (tool: Tool): void => set({ tool, inHand: undefined, says: '' });

/** Shows what is in the hand, and says what there is to say of it; nothing lays it down. */
export const holdInHand = (inHand?: InHand, says = ''): void => set({ ...now, inHand, says });

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** The hand on the drawing as it is now. */
export const usePlaceHand = (): PlaceHand => useSyncExternalStore(subscribe, () => now);

/** The tool in the hand, for what is not drawn anew with every move. */
export const useTool = (): Tool => useSyncExternalStore(subscribe, () => now.tool);

/** What is in the hand at this moment, for what answers to it. */
export const heldNow = (): InHand | undefined => now.inHand;
