import { type ConductorAsk, type ConductorPick, type NoConductor, pickConductor } from './pick-conductor.ts';
import { type FuseAsk, type FusePick, type NoFuse, pickFuse } from './pick-fuse.ts';

/** What a feed serves, and the wire it may be; the current of the wire is the steady one of the load. */
export interface FeedAsk {
  readonly load: Omit<FuseAsk, 'conductorA'>;
  readonly wire: Omit<ConductorAsk, 'currentA' | 'fuseA'>;
}

/** The fuse and the conductor of a feed; `wire` is absent where there is no fuse to size it for. */
export type FeedPick =
  | { readonly fits: true; readonly fuse: FusePick; readonly wire: ConductorPick }
  | { readonly fits: false; readonly fuse: FusePick | NoFuse; readonly wire?: NoConductor };

/**
 * The fuse of a new feed and the wire behind it: the load picks the fuse, and the wire is thick enough for both. So a fuse
 * never passes a wire of its own feed: where it would, the wire has grown.
 */
export const pickFeed = ({ load, wire }: FeedAsk): FeedPick => {
  const fuse = pickFuse(load);
  if (!fuse.fits) return { fits: false, fuse };
  const picked = pickConductor({ ...wire, currentA: load.steadyA, fuseA: fuse.ratingA });
  return picked.fits ? { fits: true, fuse, wire: picked } : { fits: false, fuse, wire: picked };
};
