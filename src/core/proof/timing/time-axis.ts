/** A jump of the recorder's clock. */
export interface ClockStep {
  /** index of the first frame after the jump, from 0 */
  readonly atFrame: number;
  readonly jumpUs: number;
}

/** Elapsed time over a recording whose clock may jump. */
export interface TimeAxis {
  /** Takes the time of the next frame and returns the time elapsed since the first; undefined where the frame has none. */
  advance(timeUs: number | undefined): number | undefined;
  /** Undefined when no frame had a time. */
  summary(): TimeSummary | undefined;
}

/** Time of a whole recording. */
export interface TimeSummary {
  readonly durationUs: number;
  /** every jump, or the first hundred */
  readonly clockSteps: readonly ClockStep[];
  readonly longestSilenceUs: number;
}

/** A jump of more than this, either way, is the clock's and adds no time (project choice). */
const longestStepUs = 60_000_000;
const mostStepsKept = 100;

/** Starts a time axis at the first frame that has a time. */
export const startTimeAxis = (): TimeAxis => {
  const clockSteps: ClockStep[] = [];
  let frame = -1;
  let lastUs: number | undefined;
  let elapsedUs = 0;
  let longestSilenceUs = 0;

  return {
    advance(timeUs) {
      frame += 1;
      if (timeUs === undefined) return undefined;
      const stepUs = lastUs === undefined ? 0 : timeUs - lastUs;
      lastUs = timeUs;
      if (stepUs > longestStepUs || stepUs < -longestStepUs) {
        if (clockSteps.length < mostStepsKept) clockSteps.push({ atFrame: frame, jumpUs: stepUs });
        return elapsedUs;
      }
      elapsedUs += stepUs;
      if (stepUs > longestSilenceUs) longestSilenceUs = stepUs;
      return elapsedUs;
    },
    summary: () =>
      lastUs === undefined
        ? undefined
        : { durationUs: Math.max(0, elapsedUs), clockSteps: [...clockSteps], longestSilenceUs },
  };
};
