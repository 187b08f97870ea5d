/** Seconds told off by the time of day in sentences, over as many midnights as may be. */
export interface DayClock {
  /** takes a time of day as a sentence writes it, `hhmmss.ss`; anything else is passed over */
  take(text: string | undefined): void;
  /** undefined before the second time */
  spanS(): number | undefined;
}

const pattern = /^([01]\d|2[0-3])([0-5]\d)([0-5]\d(?:\.\d+)?)$/;
const secondsInDay = 86_400;

/** Starts the clock. A step of more than half a day on is one back, and no step back takes time away. */
export const startDayClock = (): DayClock => {
  let lastS: number | undefined;
  let spanS = 0;
  let steps = 0;
  return {
    take(text) {
      const [, hours, minutes, seconds] = pattern.exec(text ?? '') ?? [];
      if (seconds === undefined) return;
      const nowS = Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds);
      if (lastS !== undefined) {
        const stepS = (nowS - lastS + secondsInDay) % secondsInDay;
        if (stepS > secondsInDay / 2) return;
        spanS += stepS;
        steps += 1;
      }
      lastS = nowS;
    },
    spanS: () => (steps === 0 ? undefined : spanS),
  };
};
