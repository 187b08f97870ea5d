import { useSyncExternalStore } from 'react';
import type { StepId } from '../route.ts';

/** Where a hint stands: beside the thing it speaks of, never over a drawing. */
export type HintPlace = 'course' | 'margin' | 'sheet';

interface HintAt {
  readonly place: HintPlace;
  /** the steps it belongs to; absent: all */
  readonly steps?: readonly StepId[];
}

/** The hints in the order in which they are given, one at a time. */
const hints = {
  next: { place: 'course' },
  kit: { place: 'margin', steps: ['kit'] },
  table: { place: 'sheet', steps: ['needs'] },
  note: { place: 'margin', steps: ['lines', 'power', 'needs'] },
  sheet: { place: 'sheet', steps: ['boat', 'kit', 'lines', 'power', 'fit', 'buy'] },
  pull: { place: 'sheet', steps: ['lines', 'power'] },
  finder: { place: 'margin' },
} as const satisfies Readonly<Record<string, HintAt>>;

export type HintId = keyof typeof hints;
// reason: the keys of the record above, in its order
const ids = Object.keys(hints) as HintId[];

const storeKey = 'fairlead-hints-gone';

const kept = (): readonly HintId[] => {
  try {
    const gone = (localStorage.getItem(storeKey) ?? '').split(' ');
    return ids.filter((id) => gone.includes(id));
  } catch {
    // A private window may bar storage; what is put away then stays away as long as the page.
    return [];
  }
};

let gone: readonly HintId[] = kept();
const listeners = new Set<() => void>();

const nowGone = (next: readonly HintId[]): void => {
  if (next.length === gone.length) return;
  gone = next;
  try {
    localStorage.setItem(storeKey, gone.join(' '));
  } catch {
    // as above
  }
  for (const listener of listeners) listener();
};

/** A hint was followed, or put away: it is not shown again. */
export const putHintAway = (id: HintId): void => nowGone(ids.filter((one) => one === id || gone.includes(one)));

/** No hint is wanted. */
export const putAllHintsAway = (): void => nowGone(ids);

/** All of them are shown once more. */
export const bringHintsBack = (): void => nowGone([]);

/** The one hint that is given at a step while some are gone: the first that belongs there. */
export const hintAt = (
  step: StepId,
  away: readonly HintId[],
): { readonly id: HintId; readonly place: HintPlace } | undefined => {
  const id = ids.find((one) => {
    const at: HintAt = hints[one];
    return !away.includes(one) && (at.steps === undefined || at.steps.includes(step));
  });
  return id === undefined ? undefined : { id, place: hints[id].place };
};

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** The hints that are gone now. */
export const useGoneHints = (): readonly HintId[] => useSyncExternalStore(subscribe, () => gone);
