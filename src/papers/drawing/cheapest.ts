/** A way to set something, whose full price is asked only where it could be the cheapest. */
export interface Priced {
  /** its place among those that were tried */
  readonly at: number;
  /** its price at the least */
  readonly least: number;
  /** its price beside what stands still, at least `least`; reckoned once */
  readonly standing: () => number;
}

/** A price with what is known of it at once, and the rest when it is asked for. */
export const priced = ({ at, least, rest }: { at: number; least: number; rest: () => number }): Priced => {
  let known: number | undefined;
  return {
    at,
    least,
    standing: () => {
      known ??= least + rest();
      return known;
    },
  };
};

/** In the order in which `cheapest` looks at them. */
export const byLeast = (one: Priced, other: Priced): number => one.least - other.least;

/**
 * The cheapest of options that stand by their least price, with what each costs beside the others as they stand now;
 * undefined is where it may not stand. Of those that cost the same it is the one that stands better alone, then the one
 * tried first.
 */
export const cheapest = <Option extends Priced>(
  options: readonly Option[],
  beside: (option: Option) => number | undefined,
): Option | undefined => {
  let best: { readonly option: Option; readonly sum: number } | undefined;
  for (const option of options) {
    if (best !== undefined && option.least > best.sum) break;
    if (best !== undefined && option.standing() > best.sum) continue;
    const more = beside(option);
    if (more === undefined) continue;
    const sum = option.standing() + more;
    const isBetter =
      best === undefined ||
      (sum - best.sum || option.standing() - best.option.standing() || option.at - best.option.at) < 0;
    if (isBetter) best = { option, sum };
  }
  return best?.option;
};
