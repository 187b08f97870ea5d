/**
 * Typical prices in whole hundredths of a euro, so that layouts can be compared before any are entered.
 * Their proportions decide which layout is cheapest; the owner's own prices replace them all.
 */
export const typicalPrices = {
  source: 'choice-prices',
  currency: 'EUR',
  trunkPerM: 420,
  dropPerM: 480,
  tee: 2200,
  terminator: 1600,
  feed: 3800,
  feedLeadPerM: 160,
  hour: 7500,
  byGrade: {
    light: { trunkPerM: 420, dropPerM: 480 },
    mid: { trunkPerM: 680, dropPerM: 750 },
    heavy: { trunkPerM: 980, dropPerM: 1080 },
    'industrial-thick': { trunkPerM: 890, dropPerM: 990 },
  },
} as const;
