/** Sentences that come ten times a second; all others of the list come once a second unless they stand below. */
const tenthOfSecond: ReadonlySet<string> = new Set(['HDG', 'HDM', 'HDT', 'ROT', 'THS']);
/** Sentences sent when something happens, or as the traffic brings it. */
const onEvent: ReadonlySet<string> = new Set(['DSC', 'HSC', 'RTE', 'VDM', 'VDO', 'WPL']);

/** How often a sentence usually comes, ms; undefined where an event sends it. Source: practice-sentence-rates. */
export const usualEveryMs = (letters: string): number | undefined => {
  if (onEvent.has(letters)) return undefined;
  if (letters === 'TTM') return 2000;
  if (letters === 'DTM') return 10_000;
  return tenthOfSecond.has(letters) ? 100 : 1000;
};

/** How often a reading leaves a turn that loses its rate, where the sheet says no better, ms. Source: practice-sentence-rates. */
export const lostRateEveryMs = 1000;
