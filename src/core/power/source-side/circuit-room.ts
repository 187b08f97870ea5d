import type { BoatIndex } from '../../boat/boat-index.ts';
import { byCodeUnit } from '../../boat/ids.ts';
import type { Panel } from '../../boat/supply.ts';
import type { PanelEntry } from '../../panels-shape.ts';
import { pickFuse } from '../pick-fuse.ts';
import { isFree } from './circuit-entry.ts';
import { panelFor, type Wanted } from './wanted-circuits.ts';

/** What wants a circuit in one phase. */
export interface WantedAt {
  readonly phase: number;
  readonly wanted: readonly Wanted[];
}

type Room = PanelEntry['room'][number];

const freeAt = (index: BoatIndex, panel: Panel, phase: number, last: number): number =>
  panel.circuits.filter((circuit) => isFree(index, circuit, { phase, last })).length + (panel.freeWays ?? 0);

/**
 * How many circuits a panel has left in each phase and what wants one there. Short is what is wanted beyond them; it is not
 * known where nobody has counted the free places and the free circuits do not do.
 */
export const circuitRoom = (index: BoatIndex, panel: Panel, phases: readonly WantedAt[]): Room[] => {
  const last = Math.max(1, ...phases.map(({ phase }) => phase));
  return phases.map(({ phase, wanted }) => {
    const mine = wanted.filter((one) => panelFor(index, one)?.id === panel.id);
    const free = freeAt(index, panel, phase, last);
    const short = Math.max(0, mine.length - free);
    const isCounted = panel.freeWays !== undefined || short === 0;
    return {
      phase,
      free,
      wanted: mine.map(({ target }) => target).sort(byCodeUnit),
      ...(isCounted ? { short } : {}),
    };
  });
};

/**
 * What a panel that is short would take: a fuse block behind one of its circuits, with a place for each thing that finds none
 * and for what that circuit fed; its feed is the fuse for all that draws together.
 */
export const blockFor = (
  index: BoatIndex,
  panel: Panel,
  { room, phases }: { readonly room: readonly Room[]; readonly phases: readonly WantedAt[] },
): PanelEntry['takes'] => {
  const worst = room.reduce<Room | undefined>(
    (most, one) => ((one.short ?? 0) > (most?.short ?? 0) ? one : most),
    undefined,
  );
  if (worst === undefined) return undefined;
  const wanted = phases.find(({ phase }) => phase === worst.phase)?.wanted ?? [];
  const mine = wanted.filter((one) => panelFor(index, one)?.id === panel.id);
  const steadyA = mine.reduce((sum, { mostA }) => sum + mostA, 0);
  const fuse = pickFuse({ steadyA });
  return { circuits: (worst.short ?? 0) + 1, ...(fuse.fits ? { feedA: fuse.ratingA } : {}) };
};
