import { meanOfMeans } from './mean-of-means.ts';

/** Runs over one known distance, to and fro, in the order they were made. */
export interface LogRuns {
  readonly distanceNm: number;
  readonly runs: readonly { readonly seconds: number; readonly indicatedKn: number }[];
}

/** What the runs say of the log. */
export interface LogRunsResult {
  readonly speedsKn: readonly number[];
  /** through the water, the stream taken out */
  readonly trueKn: number;
  readonly indicatedKn: number;
  /** what the log shows too little, in hundredths: true / indicated */
  readonly pct: number;
}

const secondsInHour = 3600;

/** Speed over a known distance: v = 3600 D / t, with D in nautical miles and t in seconds; 60 D / t with t in minutes. */
export const speedOverDistanceKn = ({ distanceNm, seconds }: { distanceNm: number; seconds: number }): number =>
  (secondsInHour * distanceNm) / seconds;

/**
 * The true speed through the water from runs to and fro: the speeds are averaged, never the times, each as the mean of means
 * has it, and so is what the log showed. Undefined for fewer than two runs, or none that took time.
 *
 * @example logRuns({ distanceNm: 1, runs: [{ seconds: 450, indicatedKn: 6 }, { seconds: 900, indicatedKn: 6 }] })?.trueKn // 6
 */
export const logRuns = ({ distanceNm, runs }: LogRuns): LogRunsResult | undefined => {
  if (runs.length < 2 || distanceNm <= 0 || runs.some(({ seconds, indicatedKn }) => seconds <= 0 || indicatedKn <= 0))
    return undefined;
  const speedsKn = runs.map(({ seconds }) => speedOverDistanceKn({ distanceNm, seconds }));
  const trueKn = meanOfMeans(speedsKn);
  const indicatedKn = meanOfMeans(runs.map((run) => run.indicatedKn));
  if (trueKn === undefined || indicatedKn === undefined) return undefined;
  return { speedsKn, trueKn, indicatedKn, pct: (trueKn / indicatedKn) * 100 };
};
