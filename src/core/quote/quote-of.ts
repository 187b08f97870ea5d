import { indexBoat } from '../boat/boat-index.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { oldBoatContingency } from '../facts/labour.ts';
import { typicalPrices } from '../facts/prices.ts';
import { exclusionIds, quoteHabits, quoteTasks } from '../facts/quote-figures.ts';
import { shoppingKinds } from '../facts/shopping-kinds.ts';
import { sumOfItems } from '../phases/phase-orders.ts';
import type { PhaseEntry } from '../phases-shape.ts';
import type { Plan } from '../plan-shape.ts';
import { hourLines, sumOfHours } from './hour-lines.ts';
import type { HourLine, PartsLine, Quote, QuotePart, QuotePhase, QuoteSums, Range } from './quote-shape.ts';
import { workToDo } from './work-to-do.ts';

/** What is bought, as far as a quote looks at it. */
export interface BoughtPlan {
  readonly shopping: readonly Pick<Plan['shopping'][number], 'id' | 'item' | 'kind' | 'count' | 'by' | 'each'>[];
  readonly phases?: { readonly phases: readonly Pick<PhaseEntry, 'phase' | 'buy'>[] };
}

/** Everything bought, phase by phase where she is refitted in several. */
export const partsOf = ({ shopping, phases }: BoughtPlan): QuotePart[] =>
  phases === undefined
    ? shopping.map(({ id, item, kind, count, by, each }) => ({
        ...{ id, item, kind, count, by, phase: 1 },
        ...(each === undefined ? {} : { each }),
      }))
    : phases.phases.flatMap(({ phase, buy }) => buy.map((item) => ({ ...item, phase })));

const byKind = (parts: readonly QuotePart[]): PartsLine[] =>
  shoppingKinds.flatMap((kind) => {
    const own = parts.filter((part) => part.kind === kind);
    return own.length === 0 ? [] : [{ kind, items: own.length, ...sumOfItems(own) }];
  });

const added = (ranges: readonly Range[]): Range => ({
  least: ranges.reduce((sum, { least }) => sum + least, 0),
  most: ranges.reduce((sum, { most }) => sum + most, 0),
});

/** The share put on top of the hours: what the file says, else what an old boat usually adds. */
export const contingencyOf = (boat: Boat): Quote['contingencyPct'] => {
  const set = boat.quote?.contingencyPct;
  const { source, least, most } = oldBoatContingency;
  return set === undefined
    ? { least: Math.round(least * 100), most: Math.round(most * 100), isSet: false, source }
    : { least: set, most: set, isSet: true, source };
};

/** Sums of one phase: labour = sum of its lines; contingency = labour x share; the whole = parts + labour + contingency. */
const sumsOf = (parts: readonly QuotePart[], hours: readonly HourLine[], pct: Range): QuoteSums => {
  const { cost, unpriced } = sumOfItems(parts);
  const labour = added(hours.map((line) => line.cost));
  const contingency = {
    least: Math.round((labour.least * pct.least) / 100),
    most: Math.round((labour.most * pct.most) / 100),
  };
  const total = added([{ least: cost, most: cost }, labour, contingency]);
  return { parts: cost, unpriced, hoursH: sumOfHours(hours), labour, contingency, total };
};

const sumOfSums = (sums: readonly QuoteSums[]): QuoteSums => ({
  parts: sums.reduce((sum, { parts }) => sum + parts, 0),
  unpriced: sums.reduce((sum, { unpriced }) => sum + unpriced, 0),
  hoursH: sumOfHours(sums),
  labour: added(sums.map(({ labour }) => labour)),
  contingency: added(sums.map(({ contingency }) => contingency)),
  total: added(sums.map(({ total }) => total)),
});

/** Lines of several phases, by task. */
const merged = (phases: readonly QuotePhase[]): HourLine[] => {
  const byTask = new Map<string, HourLine>();
  for (const line of phases.flatMap(({ hours }) => hours)) {
    const before = byTask.get(line.task);
    byTask.set(
      line.task,
      before === undefined
        ? line
        : {
            ...line,
            count: before.count + line.count,
            hoursH: sumOfHours([before, line]),
            cost: added([before.cost, line.cost]),
            of: [...before.of, ...line.of],
          },
    );
  }
  return [...byTask.values()].sort((a, b) => quoteTasks.indexOf(a.task) - quoteTasks.indexOf(b.task));
};

const idsOf = ({ kit }: Boat, fate: 'comes' | 'goes'): string[] =>
  kit.filter((unit) => unit.fate === fate).map(({ id }) => id);

/** What the refit brings and takes away, what is not part of it, and what may change it. */
const wordsOf = (boat: Boat, { readings, before, tape }: Plan): Omit<Quote, QuoteFigures> => {
  const { includes = [], exclusions = [], validDays = quoteHabits.validDays, terms } = boat.quote ?? {};
  const met = readings.filter(({ arrives }) => arrives);
  return {
    gains: met.filter(({ seenBefore }) => seenBefore !== true),
    keeps: met.filter(({ seenBefore }) => seenBefore === true).length,
    missing: readings.filter(({ arrives }) => !arrives),
    loses: before.filter(({ after }) => !after),
    comes: idsOf(boat, 'comes'),
    goes: idsOf(boat, 'goes'),
    excluded: exclusionIds.filter((id) => !includes.includes(id)),
    ownExclusions: exclusions,
    mayChange: tape,
    validDays,
    ...(terms === undefined ? {} : { terms }),
  };
};

type QuoteFigures =
  | 'by'
  | 'currency'
  | 'rate'
  | 'contingencyPct'
  | 'phases'
  | 'hours'
  | 'partsByKind'
  | 'parts'
  | 'sums';

/**
 * What the refit of a boat brings, takes away and costs: parts, hours at a rate, and a share on top of the hours, as a range,
 * phase by phase. Pure, and computed when it is asked for: it stands in no plan.
 */
export const quoteOf = ({ boat, plan }: { readonly boat: Boat; readonly plan: Plan }): Quote => {
  const terms = boat.quote ?? {};
  const { hour, currency } = boat.prices ?? typicalPrices;
  const rate = terms.by === 'owner' ? 0 : hour;
  const pct = contingencyOf(boat);
  const parts = partsOf(plan);
  const work = workToDo(indexBoat(boat), plan, parts);
  const numbers = new Set([...parts.map(({ phase }) => phase), ...work.map(({ phase }) => phase)]);
  const phases = [...numbers]
    .sort((a, b) => a - b)
    .map((phase): QuotePhase => {
      const own = parts.filter((part) => part.phase === phase);
      const hours = hourLines(
        work.filter((one) => one.phase === phase),
        terms,
        rate,
      );
      return { phase, hours, partsByKind: byKind(own), sums: sumsOf(own, hours, pct) };
    });
  return {
    by: terms.by ?? 'professional',
    currency,
    rate,
    contingencyPct: pct,
    phases,
    hours: merged(phases),
    partsByKind: byKind(parts),
    parts,
    sums: sumOfSums(phases.map(({ sums }) => sums)),
    ...wordsOf(boat, plan),
  };
};
