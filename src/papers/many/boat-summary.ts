import { isOpen } from '../../core/accepted-findings.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { type Finding, type Level, levels, type Plan } from '../../core/plan-shape.ts';
import { quoteOf } from '../../core/quote/quote-of.ts';
import type { Range } from '../../core/quote/quote-shape.ts';

/** What one row of many boats says of one of them. */
export interface BoatSummary {
  readonly boat: string;
  /** open findings of each level */
  readonly open: Readonly<Record<Level, number>>;
  /** findings accepted with a reason */
  readonly accepted: number;
  readonly readings: { readonly arrive: number; readonly wanted: number };
  /** what the refit buys, in hundredths of the currency, without the items nobody knows a price of, and the hours of its work */
  readonly parts: { readonly cost: number; readonly currency: string };
  readonly hoursH: Range;
}

const openOf = (findings: readonly Finding[], level: Level): number =>
  findings.filter((finding) => finding.level === level && isOpen(finding)).length;

/** One boat in a row of figures. */
export const boatSummary = (boat: Boat, plan: Plan): BoatSummary => {
  const { sums, currency } = quoteOf({ boat, plan });
  const [danger = 0, fault = 0, doubt = 0, advice = 0] = levels.map((level) => openOf(plan.findings, level));
  return {
    boat: boat.name,
    open: { danger, fault, doubt, advice },
    accepted: plan.findings.filter((finding) => !isOpen(finding)).length,
    readings: { arrive: plan.readings.filter(({ arrives }) => arrives).length, wanted: plan.readings.length },
    parts: { cost: sums.parts, currency },
    hoursH: sums.hoursH,
  };
};
