import { dockFigures } from '../../facts/dock-figures.ts';
import { faultRanges } from '../../facts/fault-ranges.ts';

/** How readings of one sort are held beside each other: ohms and errors by their ratio, the rest by their difference. */
export type Scale = 'ohm' | 'volts' | 'devices' | 'errors' | 'yes-no';

/** What a reading may be, in its own unit. `fromFeed`: volts counted from the reading at the feed where there is one. */
export interface ReadingRange {
  readonly scale: Scale;
  readonly least: number;
  readonly most: number;
  readonly fromFeed?: true;
}

const leastOhm = 0.05;
const { leadsOhm, meterPct, openOhm } = dockFigures;

/** A figure on the scale on which readings of its sort are compared. */
export const onScale = (scale: Scale, value: number): number => {
  if (scale === 'ohm') return Math.log(Math.min(Math.max(value, leastOhm), openOhm.value));
  return scale === 'errors' ? Math.log1p(Math.max(0, Math.min(value, 1e6))) : value;
};

/** How far a reading strays beyond its range on that scale, once the meter and its leads are counted in. */
const strayOf = ({ scale, least, most }: ReadingRange): number =>
  scale === 'ohm'
    ? Math.hypot(meterPct.value / 100, leadsOhm.value / 2 / Math.max(leastOhm, Math.sqrt(least * most)))
    : faultRanges.stray[scale];

const { slips, whole } = faultRanges;

const sCurve = (x: number): number => 1 / (1 + Math.exp(-1.702 * x));

/** A range on the scale its readings are compared on. */
export interface ScaledRange {
  readonly scale: Scale;
  readonly isFromFeed: boolean;
  readonly least: number;
  readonly most: number;
  readonly stray: number;
}

/** The volts at the feed: as they were read, else all that they may be. */
export interface FeedVolts {
  readonly least: number;
  readonly most: number;
}

export const scaledRange = (range: ReadingRange): ScaledRange => {
  const { scale } = range;
  const stray = strayOf(range);
  const least = onScale(scale, range.least);
  const most = Math.max(least + stray / 10, onScale(scale, range.most));
  return { scale, isFromFeed: range.fromFeed === true, least, most, stray };
};

/**
 * How likely a reading is where it may be anywhere in a range, p(x) = (1 - e) (S((x - l)/s) - S((x - m)/s)) / (m - l) + e / w,
 * S the logistic curve, l and m the range and x the reading, all on their scale, s how far the meter strays, e the share of slips and
 * w the whole scale.
 */
export const likelihood = (range: ScaledRange, x: number, feed: FeedVolts): number => {
  const { scale, isFromFeed, stray } = range;
  const least = range.least + (isFromFeed ? feed.least : 0);
  const most = range.most + (isFromFeed ? feed.most : 0);
  const inside = (sCurve((x - least) / stray) - sCurve((x - most) / stray)) / (most - least);
  return (1 - slips) * inside + slips / whole[scale];
};
