import { type BusReadings, type Cause, feedVolts } from './diagnose.ts';
import { type FeedVolts, type ReadingRange, scaledRange } from './reading-range.ts';
import type { ReadingKey } from './sound-ranges.ts';

/** What to measure next, and what it reads under each of the causes that lead. */
export interface NextMeasurement {
  readonly key: ReadingKey;
  readonly expects: readonly { readonly fault: string; readonly range: ReadingRange }[];
}

/** So many causes are told apart, and none less likely than this share of the first. */
const leading = { most: 6, share: 0.01 } as const;

/** Under this a reading is not worth the walk. */
const leastWorth = 0.002;

const span = (range: ReadingRange, feed: FeedVolts): { least: number; most: number } => {
  const { isFromFeed, least, most, stray } = scaledRange(range);
  const from = isFromFeed ? feed : { least: 0, most: 0 };
  return { least: least + from.least - stray, most: most + from.most + stray };
};

/** The share of the readings of either range that the other cannot give, in the mean: 1 where they lie apart, 0 where they agree. */
const toldApart = (one: ReadingRange, other: ReadingRange, feed: FeedVolts): number => {
  const [a, b] = [span(one, feed), span(other, feed)];
  const shared = Math.max(0, Math.min(a.most, b.most) - Math.max(a.least, b.least));
  return 1 - shared / 2 / (a.most - a.least) - shared / 2 / (b.most - b.least);
};

const worth = (causes: readonly Cause[], key: ReadingKey, feed: FeedVolts): number =>
  causes.reduce(
    (sum, one, turn) =>
      sum +
      causes.slice(turn + 1).reduce((part, other) => {
        const [a, b] = [one.ranges.get(key), other.ranges.get(key)];
        return a === undefined || b === undefined ? part : part + one.share * other.share * toldApart(a, b, feed);
      }, 0),
    0,
  );

/**
 * The reading not taken yet that best tells the leading causes apart: the one with the largest sum over pairs of causes of
 * P(a) P(b) d(a, b), d the share of what either would read that the other cannot. Absent where one cause leads by far, or
 * nothing left to read tells them apart.
 */
export const nextMeasurement = (causes: readonly Cause[], readings: BusReadings): NextMeasurement | undefined => {
  const first = causes[0]?.share ?? 0;
  const lead = causes.filter(({ share }, turn) => turn < leading.most && share >= first * leading.share);
  if (lead.length < 2) return undefined;
  const feed = feedVolts(readings);
  const open = [...(lead[0]?.ranges.keys() ?? [])].filter((key) => !readings.has(key));
  const scored = open.map((key) => ({ key, worth: worth(lead, key, feed) }));
  const best = scored.reduce((one, other) => (other.worth > one.worth + 1e-9 ? other : one), { key: '', worth: 0 });
  if (best.worth < leastWorth) return undefined;
  return {
    key: best.key,
    expects: lead.flatMap(({ fault, ranges }) => {
      const range = ranges.get(best.key);
      return range === undefined ? [] : [{ fault, range }];
    }),
  };
};
