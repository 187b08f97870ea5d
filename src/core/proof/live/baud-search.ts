import { listeningFigures, usualBauds } from '../../facts/listening-figures.ts';
import { type LineQuality, startLineQuality } from './line-quality.ts';

const bauds: readonly number[] = usualBauds.map(({ value }) => value);
const { wrongSpeedShare, nextSpeedMs } = listeningFigures;

/** Listens at one speed after the other until lines come whole. */
export interface BaudSearch {
  readonly baud: () => number;
  /** Takes note of what came; gives the speed to change to, where this one is wrong. */
  heard(bytes: { readonly came: number; readonly whole: number; readonly nowMs: number }): number | undefined;
}

/**
 * Starts at the slowest usual speed, or stays at the one given. At a wrong speed no line is whole; where some are, what
 * is lost between them is noise. Where nothing comes it waits: a line that is silent says
 * nothing of its speed.
 */
export const startBaudSearch = (given?: number): BaudSearch => {
  const quality: LineQuality = startLineQuality();
  let at = 0;
  let changes = 0;
  let changedMs = Number.NEGATIVE_INFINITY;
  const baud = (): number => given ?? bauds[at] ?? usualBauds[0].value;
  return {
    baud,
    heard(bytes) {
      if (given !== undefined) return undefined;
      quality.add(bytes);
      const lost = quality.lostShare(bytes.nowMs);
      if (lost === undefined || lost <= wrongSpeedShare.value) return undefined;
      // once each was tried there is no haste: the line may be noise, or speak soon
      if (changes >= bauds.length && bytes.nowMs - changedMs < nextSpeedMs.value) return undefined;
      quality.reset();
      at = (at + 1) % bauds.length;
      changes += 1;
      changedMs = bytes.nowMs;
      return baud();
    },
  };
};
