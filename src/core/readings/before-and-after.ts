import type { BoatIndex } from '../boat/boat-index.ts';
import { lastPhase } from '../boat/phase.ts';
import type { ReadingId } from '../facts/reading-ids.ts';
import type { SeenEntry } from '../plan-shape.ts';
import type { Refit } from './refit.ts';
import { type Seen, seenIn } from './seen.ts';

/** Phase 0 is the boat as she was found: what leaves is aboard, what comes is not. */
export const phaseBefore = 0;

const isSame = (one: Pick<Seen, 'reading' | 'instance'>, other: Pick<Seen, 'reading' | 'instance'>): boolean =>
  one.reading === other.reading && (one.instance === undefined || one.instance === other.instance);

/** Units on which people read; the others only work with a reading or pass it on. */
const screenKinds: ReadonlySet<string> = new Set([
  'computer',
  'display',
  'instrument',
  'pilot-head',
  'sounder',
  'tablet',
]);

/** Whether people read readings on a unit: by the kind of its sheet (source: choice-before-and-after). */
export const isScreen = (index: BoatIndex, kit: string): boolean => screenKinds.has(index.sheetOf.get(kit)?.kind ?? '');

/**
 * What every unit heard before the refit, by the joins of the file, and whether any unit still has that reading when
 * it is done; what a screen showed counts only where a screen shows it again. Nothing is lost unless something leaves.
 * Pure; sorted by reading, unit, instance.
 */
export const beforeOf = (refit: Refit): SeenEntry[] => {
  const { index } = refit;
  const before = seenIn(refit, phaseBefore);
  if (!index.boat.kit.some(({ fate }) => fate === 'goes')) return before.map((entry) => ({ ...entry, after: true }));
  const left = new Map<ReadingId, Seen[]>();
  for (const entry of seenIn(refit, lastPhase(index.boat))) {
    const group = left.get(entry.reading);
    if (group === undefined) left.set(entry.reading, [entry]);
    else group.push(entry);
  }
  return before.map((entry) => {
    const isRead = isScreen(index, entry.at);
    const others = (left.get(entry.reading) ?? []).filter(({ at }) => !isRead || isScreen(index, at));
    return { ...entry, after: others.some((other) => isSame(entry, other)) };
  });
};

/** The needs, each with whether any unit had its reading before the refit. */
export const withSeenBefore = <Entry extends Pick<Seen, 'reading' | 'instance'>>(
  readings: readonly Entry[],
  before: readonly SeenEntry[],
): (Entry & { readonly seenBefore: boolean })[] =>
  readings.map((entry) => ({ ...entry, seenBefore: before.some((seen) => isSame(entry, seen)) }));
