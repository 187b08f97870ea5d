import { listeningFigures } from '../../facts/listening-figures.ts';

/** How often something comes. */
export interface Pace {
  add(nowMs: number): void;
  /** its longest usual gap; undefined until it came often enough to tell */
  gapMs(): number | undefined;
}

const leastTimes = 4;
/** A gap that was long once is forgotten little by little, so that one lost message hides no silence for ever. */
const forgetting = 0.98;

/** Starts with the first time something came. */
export const startPace = (firstMs: number): Pace => {
  let lastMs = firstMs;
  let times = 1;
  let gapMs = 0;
  return {
    add(nowMs) {
      gapMs = Math.max(nowMs - lastMs, gapMs * forgetting);
      lastMs = nowMs;
      times += 1;
    },
    gapMs: () => (times < leastTimes ? undefined : gapMs),
  };
};

const { senderSilentMs, senderSilentGaps } = listeningFigures;

/** Whether something that came last so long ago should have come again by now. */
export const isOverdue = (ageMs: number, gapMs: number): boolean =>
  ageMs > Math.max(senderSilentMs.value, gapMs * senderSilentGaps.value);
