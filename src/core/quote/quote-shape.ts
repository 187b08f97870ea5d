import type { ExclusionId, QuoteTask } from '../facts/quote-figures.ts';
import type { SourceKey } from '../facts/sources.ts';
import type { ReadingEntry, SeenEntry, ShoppingEntry, TapeEntry } from '../plan-shape.ts';

/** From the least to the most that is reckoned with. */
export interface Range {
  readonly least: number;
  readonly most: number;
}

/** One piece of work: how often a task is done in a phase, and for what. */
export interface Work {
  readonly task: QuoteTask;
  readonly count: number;
  readonly phase: number;
  /** the unit, line or way it is for; absent where it is for the whole boat */
  readonly of?: string;
  /** units fitted within it that have no piece of their own */
  readonly also?: readonly string[];
  /** hours of one, where the boat file says them for this very thing */
  readonly eachH?: number;
}

/** All work of one task. Hours and money of all of it; `set` is the reason where the owner of the file set its hours. */
export interface HourLine {
  readonly task: QuoteTask;
  readonly count: number;
  readonly hoursH: Range;
  /** hundredths of the currency */
  readonly cost: Range;
  readonly of: readonly string[];
  readonly set?: string;
  readonly source: SourceKey;
}

/** Parts of one kind: their sum in hundredths of the currency, and how many items have no price. */
export interface PartsLine {
  readonly kind: ShoppingEntry['kind'];
  readonly items: number;
  readonly cost: number;
  readonly unpriced: number;
}

/** One item of the parts list. */
export interface QuotePart extends Pick<ShoppingEntry, 'id' | 'item' | 'kind' | 'count' | 'by'> {
  readonly each?: number;
  readonly phase: number;
}

/** Sums in hundredths of the currency: the whole is the sum of parts, labour and contingency, at either end. */
export interface QuoteSums {
  readonly parts: number;
  /** items whose price is not known, and which are in no sum */
  readonly unpriced: number;
  readonly hoursH: Range;
  readonly labour: Range;
  readonly contingency: Range;
  readonly total: Range;
}

export interface QuotePhase {
  readonly phase: number;
  readonly hours: readonly HourLine[];
  readonly partsByKind: readonly PartsLine[];
  readonly sums: QuoteSums;
}

/** What the refit of one boat brings and costs. `sums` are those of the phases added up. */
export interface Quote {
  readonly by: 'professional' | 'owner';
  readonly currency: string;
  /** of an hour, in hundredths of the currency; nothing where the owner does the work */
  readonly rate: number;
  readonly contingencyPct: Range & { readonly isSet: boolean; readonly source: SourceKey };
  readonly phases: readonly QuotePhase[];
  readonly hours: readonly HourLine[];
  readonly partsByKind: readonly PartsLine[];
  readonly parts: readonly QuotePart[];
  readonly sums: QuoteSums;
  /** needs met that no unit had before the refit, and how many are met that one had */
  readonly gains: readonly ReadingEntry[];
  readonly keeps: number;
  /** asked for, and not met */
  readonly missing: readonly ReadingEntry[];
  readonly loses: readonly SeenEntry[];
  readonly comes: readonly string[];
  readonly goes: readonly string[];
  readonly excluded: readonly ExclusionId[];
  readonly ownExclusions: readonly string[];
  readonly mayChange: readonly TapeEntry[];
  readonly validDays: number;
  readonly terms?: string;
}
