import type { Winning } from './waiting-message.ts';

/** Bus time of all that wins in a stretch of `spanUs`: Σ ceil(span / T) · C, µs. Source: davis-2007. */
export const winningUs = (winning: readonly Winning[], spanUs: number): number =>
  winning.reduce((sum, { takesUs, everyUs }) => sum + Math.ceil(spanUs / everyUs) * takesUs, 0);

/**
 * The first t ≥ `startUs` that `next` leaves as it is, by putting each answer in again; undefined once it is past `mostUs`.
 * `next` must never fall as t grows.
 */
export const settled = (
  { startUs, mostUs }: { readonly startUs: number; readonly mostUs: number },
  next: (us: number) => number,
): number | undefined => {
  let us = startUs;
  while (us <= mostUs) {
    const then = next(us);
    if (then === us) return us;
    us = then;
  }
  return undefined;
};
