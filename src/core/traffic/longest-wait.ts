import type { WaitingMessage } from './waiting-message.ts';
import { settled, winningUs } from './winning-us.ts';

/** A bus that is busy this long without a pause holds no promise worth printing. */
const mostBusyUs = 10_000_000;

/**
 * Longest time from the moment a message is ready until its last frame is through, µs; undefined where nothing bounds it.
 *
 * Busy stretch: t = B + ceil(t / T) · F c' + Σ ceil(t / Tk) · Ck. For each sending q of it: w = B + q F c' + (F − 1) c' +
 * Σ ceil((w + bit) / Tk) · Ck, R(q) = w − q T + c, R = the largest. c' = c, and c + B where frames are fed singly.
 * Source: davis-2007; F > 1 is an extension of it, computed-packet-wait.
 */
export const longestWait = (message: WaitingMessage): number | undefined => {
  const { frameUs, frames, everyUs, blockingUs, winning, bitUs, fedSingly = false } = message;
  const eachUs = fedSingly ? frameUs + blockingUs : frameUs;
  const takesUs = frames * eachUs;
  const all = [...winning, { takesUs, everyUs }];
  // A bus asked for more than it carries never comes to rest, and the search for it would be long.
  if (all.reduce((sum, one) => sum + one.takesUs / one.everyUs, 0) >= 1) return undefined;

  const busyUs = settled(
    { startUs: blockingUs + takesUs, mostUs: mostBusyUs },
    (us) => blockingUs + winningUs(all, us),
  );
  if (busyUs === undefined) return undefined;

  let longestUs = 0;
  let fromUs = blockingUs + takesUs - eachUs;
  for (let sending = 0; sending < Math.ceil(busyUs / everyUs); sending += 1) {
    const ownUs = blockingUs + sending * takesUs + takesUs - eachUs;
    const waitedUs = settled(
      { startUs: Math.max(fromUs, ownUs), mostUs: mostBusyUs },
      (us) => ownUs + winningUs(winning, us + bitUs),
    );
    if (waitedUs === undefined) return undefined;
    fromUs = waitedUs;
    longestUs = Math.max(longestUs, waitedUs - sending * everyUs + frameUs);
  }
  return longestUs;
};
