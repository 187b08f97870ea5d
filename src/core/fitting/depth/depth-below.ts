import { depthOffsets, type TransducerDepth } from './depth-offsets.ts';

/** What a depth is counted from. */
export type DepthReference = 'surface' | 'transducer' | 'keel';

/** One depth of water, counted from each of the three. */
export interface DepthBelow {
  readonly surfaceM: number;
  readonly transducerM: number;
  readonly keelM: number;
}

/**
 * A depth known below one reference, below all three: a sounding at sea, a lead line at the dock, or the depth at which an
 * alarm is to sound, so that each screen can be given it in the reference that screen counts from.
 *
 * @example depthBelow({ depthM: 4, from: 'transducer', draftM: 1.95, transducerBelowWaterM: 0.6 }).keelM // 2.65
 */
export const depthBelow = ({
  depthM,
  from,
  ...boat
}: TransducerDepth & { readonly depthM: number; readonly from: DepthReference }): DepthBelow => {
  const { surfaceM, keelM } = depthOffsets(boat);
  const transducerM = depthM - { surface: surfaceM, transducer: 0, keel: keelM }[from];
  return { surfaceM: transducerM + surfaceM, transducerM, keelM: transducerM + keelM };
};
