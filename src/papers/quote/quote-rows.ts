import type { Boat } from '../../core/boat/boat-schema.ts';
import { shortName } from '../../core/boat/short-name.ts';
import { type QuoteTask, quoteHabits } from '../../core/facts/quote-figures.ts';
import { readingName } from '../../core/facts/reading-words.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { HourLine, Quote, QuoteSums, Range } from '../../core/quote/quote-shape.ts';
import { beforeAndAfter } from '../lists/before-and-after.ts';
import { printMoney } from '../lists/order-words.ts';
import { printCount } from '../lists/print-figure.ts';
import { kindTitles } from '../lists/shopping-groups.ts';
import { mayChangeRows } from './may-change-rows.ts';
import { taskCounts, taskNames } from './task-words.ts';

/** One line of a quote with its money; `fact` says what it is made of. */
export interface QuoteRow {
  readonly id: string;
  readonly what: string;
  readonly fact: string;
  readonly money: string;
}

/** One line of work. */
export interface HourRow extends QuoteRow {
  readonly task: QuoteTask;
  readonly count: number;
  readonly hours: string;
  /** ids it lights on the drawing */
  readonly lights: readonly string[];
}

/** A quote in words: for the page, the terminal and the screen. */
export interface QuoteRows {
  readonly total: string;
  readonly standing: string;
  readonly gets: readonly string[];
  readonly loses: readonly string[];
  readonly parts: readonly QuoteRow[];
  readonly hours: readonly HourRow[];
  readonly sums: readonly QuoteRow[];
  /** one for each phase; none where she is refitted in one go */
  readonly phases: readonly QuoteRow[];
  readonly exclusions: readonly string[];
  readonly mayChange: readonly QuoteRow[];
  readonly validity: string;
}

/** "4" or "4 to 6.5", without the zeros that say nothing. */
export const printRange = ({ least, most }: Range): string => {
  const one = (value: number): string => String(Math.round(value * 100) / 100);
  return least === most ? one(least) : `${one(least)} to ${one(most)}`;
};

/** "1200.00", or "1200.00 to 1500.00". */
export const moneyRange = ({ least, most }: Range): string =>
  least === most ? printMoney(least) : `${printMoney(least)} to ${printMoney(most)}`;

const hourRow = (line: HourLine): HourRow => {
  const set = line.set === undefined ? '' : `; hours set for this boat: ${line.set}`;
  return {
    id: line.task,
    task: line.task,
    what: taskNames[line.task],
    count: line.count,
    hours: `${printRange(line.hoursH)} h`,
    fact: `${taskCounts[line.task]}${set}`,
    money: moneyRange(line.cost),
    lights: line.of,
  };
};

const askedWords = (unpriced: number): string =>
  unpriced === 0 ? '' : `${printCount(unpriced, 'item')} whose price is to be asked, not in the sum`;

const sumRows = ({ by, rate, currency, contingencyPct }: Quote, sums: QuoteSums): QuoteRow[] => {
  const at = by === 'owner' ? 'by the owner, without pay' : `at ${printMoney(rate)} ${currency} an hour`;
  const usual = contingencyPct.isSet ? '' : ', what an old boat usually adds to the hours';
  return [
    { id: 'parts', what: 'Parts', fact: askedWords(sums.unpriced), money: printMoney(sums.parts) },
    { id: 'labour', what: 'Work', fact: `${printRange(sums.hoursH)} h ${at}`, money: moneyRange(sums.labour) },
    {
      id: 'contingency',
      what: 'For what turns up',
      fact: `${printRange(contingencyPct)} % of the work${usual}`,
      money: moneyRange(sums.contingency),
    },
    { id: 'total', what: 'Together', fact: `in ${currency}`, money: moneyRange(sums.total) },
  ];
};

const phaseRow = ({ phase, sums }: Quote['phases'][number]): QuoteRow => ({
  id: `phase-${phase}`,
  what: `Phase ${phase}`,
  fact: `parts ${printMoney(sums.parts)}, ${printRange(sums.hoursH)} h of work`,
  money: moneyRange(sums.total),
});

const namesIn =
  ({ kit }: Boat) =>
  (id: string): string =>
    shortName(kit.find((unit) => unit.id === id)?.name ?? id);

/** What the owner gets: the units that come, then what is new on each screen, then what stays as it was. */
const getsOf = (boat: Boat, { comes, gains, keeps }: Quote): string[] => {
  const nameOf = namesIn(boat);
  const screens = [...new Set(gains.map(({ at }) => at))];
  const fresh = screens.map((at) => {
    const readings = gains.filter((entry) => entry.at === at).map((entry) => readingName(entry));
    return `New on ${nameOf(at)}: ${[...new Set(readings)].join(', ')}.`;
  });
  return [
    ...(comes.length === 0 ? [] : [`Fitted: ${comes.map(nameOf).join('; ')}.`]),
    ...fresh,
    ...(keeps === 0 ? [] : [`${printCount(keeps, 'reading')} that you had before, at the screens you asked for.`]),
  ];
};

const losesOf = (boat: Boat, plan: Plan, { goes, missing }: Quote): string[] => {
  const nameOf = namesIn(boat);
  const lost = beforeAndAfter(boat, plan).lost;
  const unmet = missing.map((entry) => `${readingName(entry)} at ${nameOf(entry.at)}`);
  return [
    ...(goes.length === 0 ? [] : [`Taken out: ${goes.map(nameOf).join('; ')}.`]),
    ...lost.map((words) => `No longer aboard: ${words}.`),
    ...(unmet.length === 0 ? [] : [`Asked for, and not reached: ${unmet.join('; ')}.`]),
  ];
};

const exclusionsOf = ({ excluded, ownExclusions }: Quote): string[] => [
  ...quoteHabits.exclusions.filter(({ id }) => excluded.includes(id)).map(({ says }) => says),
  ...ownExclusions,
];

/** The quote of one boat in words, lengths in metres. */
export const quoteRows = (boat: Boat, plan: Plan, quote: Quote): QuoteRows => ({
  total: `${moneyRange(quote.sums.total)} ${quote.currency}`,
  standing: 'This is reckoned from what is known of the boat today. It is an estimate, not a promise.',
  gets: getsOf(boat, quote),
  loses: losesOf(boat, plan, quote),
  parts: quote.partsByKind.map(({ kind, items, cost, unpriced }) => ({
    id: kind,
    what: kindTitles[kind],
    fact: [printCount(items, 'item'), ...(unpriced === 0 ? [] : [askedWords(unpriced)])].join(', '),
    money: printMoney(cost),
  })),
  hours: quote.hours.map(hourRow),
  sums: sumRows(quote, quote.sums),
  phases: quote.phases.length < 2 ? [] : quote.phases.map(phaseRow),
  exclusions: exclusionsOf(quote),
  mayChange: mayChangeRows(boat, quote),
  validity: `It holds for ${printCount(quote.validDays, 'day')} from its date.`,
});
