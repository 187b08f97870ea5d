import { type LineQuality, startLineQuality } from './line-quality.ts';

/** The speeds that adapters and talkers of a boat run at, bit/s (source: raymond-nmea; 115,200 is common practice of adapters). */
export const usualBauds = [4800, 38_400, 115_200] as const;

/** More of the bytes than this making no line is a wrong speed or noise, not a lost line now and then (project choice). */
export const mostLostShare = 0.5;

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
  const baud = (): number => given ?? usualBauds[at] ?? usualBauds[0];
  return {
    baud,
    heard(bytes) {
      if (given !== undefined) return undefined;
      quality.add(bytes);
      const lost = quality.lostShare(bytes.nowMs);
      if (lost === undefined || lost <= mostLostShare) return undefined;
      quality.reset();
      at = (at + 1) % usualBauds.length;
      return baud();
    },
  };
};
