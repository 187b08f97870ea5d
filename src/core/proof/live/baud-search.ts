import { listeningFigures, usualBauds } from '../../facts/listening-figures.ts';
import { type LineQuality, startLineQuality } from './line-quality.ts';

const bauds: readonly number[] = usualBauds.map(({ value }) => value);
const mostLost = listeningFigures.mostLostShare.value;

/** Listens at one speed after the other until lines come whole. */
export interface BaudSearch {
  readonly baud: () => number;
  /** Takes note of what came; gives the speed to change to, where this one is wrong. */
  heard(bytes: { readonly came: number; readonly whole: number; readonly nowMs: number }): number | undefined;
}

/**
 * Starts at the slowest usual speed, or stays at the one given. Where nothing comes it waits: a line that is silent says
 * nothing of its speed.
 */
export const startBaudSearch = (given?: number): BaudSearch => {
  const quality: LineQuality = startLineQuality();
  let at = 0;
  const baud = (): number => given ?? bauds[at] ?? usualBauds[0].value;
  return {
    baud,
    heard(bytes) {
      if (given !== undefined) return undefined;
      quality.add(bytes);
      const lost = quality.lostShare(bytes.nowMs);
      if (lost === undefined || lost <= mostLost) return undefined;
      quality.reset();
      at = (at + 1) % bauds.length;
      return baud();
    },
  };
};
