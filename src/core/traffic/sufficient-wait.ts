import type { WaitingMessage } from './waiting-message.ts';
import { settled, winningUs } from './winning-us.ts';

/** The short test is meant for answers within one interval; past this many it is given up. */
const mostIntervals = 1000;

/**
 * The short test beside the exact wait, µs: one sending only, with the message itself among what may just have begun:
 * w = max(B, c) + (F − 1) c + Σ ceil((w + bit) / Tk) · Ck, R = w + c. Where R is within the interval, no wait is longer.
 * Undefined where it does not settle. Source: davis-2007.
 */
export const sufficientWait = (message: WaitingMessage): number | undefined => {
  const { frameUs, frames, everyUs, blockingUs, winning, bitUs } = message;
  const ownUs = Math.max(blockingUs, frameUs) + (frames - 1) * frameUs;
  const waitedUs = settled(
    { startUs: ownUs, mostUs: mostIntervals * everyUs },
    (us) => ownUs + winningUs(winning, us + bitUs),
  );
  return waitedUs === undefined ? undefined : waitedUs + frameUs;
};
