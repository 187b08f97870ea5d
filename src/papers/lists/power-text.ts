import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { cardBoat } from '../cards/card-boat.ts';
import { type FedRow, feedRows } from './feed-rows.ts';
import { type LoadSumRow, loadSumRows } from './load-rows.ts';
import { keepUnits, printCount } from './print-figure.ts';

const width = 80;

const lines = (words: string, lead: string): string[] => textLines(keepUnits(words), { width, lead });

const sumWords = ({ source, phase, typical, most }: LoadSumRow): string =>
  `${source} ${phase}: ${typical} typical, ${most} with everything drawing`;

/** The feed on whose way from the bank most is lost: volts of two systems cannot be held against each other. */
const worstOf = (fed: readonly FedRow[]): FedRow | undefined =>
  fed
    .filter(({ feed }) => feed?.lostPct !== undefined)
    .sort((one, other) => (other.feed?.lostPct ?? 0) - (one.feed?.lostPct ?? 0))[0];

const feedCount = (fed: readonly FedRow[]): string => {
  const worst = worstOf(fed);
  const needs = worst === undefined || worst.needs === '' ? '' : `, and it needs ${worst.needs}`;
  return `${printCount(fed.length, 'feed')}${
    worst === undefined ? '.' : `. Most is lost on the way to ${worst.what}: ${worst.atEnd} arrive${needs}.`
  }`;
};

/**
 * What the plan's text says of power: what each bank gives, the worst feed, what has no feed, then every feed that
 * somebody has to look at. Nothing where the boat has neither feed nor load.
 */
export const powerText = (boat: Boat, plan: Plan): string[] => {
  const index = cardBoat(boat);
  const { fed, unfed } = feedRows(index, plan);
  const sums = loadSumRows(index, plan);
  if (plan.loads.length === 0 && fed.length === 0) return [];
  return [
    'POWER',
    ...sums.flatMap((row) => lines(`${sumWords(row)}.`, '')),
    ...lines(feedCount(fed), ''),
    ...unfed.flatMap(({ what, fact }) => lines(`${what}: ${fact}.`, '- ')),
    ...fed
      .filter(({ isOpen }) => isOpen)
      .flatMap(({ what, fact, why }) => lines(`${what} ${fact}. ${why.at(-1) ?? ''}`, '- ')),
  ];
};

/** Everything there is to say of power as text of 80 columns: sums, then every feed with why its wire and fuse are so. */
export const powerPaper = (boat: Boat, plan: Plan): string => {
  const { fed } = feedRows(cardBoat(boat), plan);
  return `${[
    `POWER, ${boat.name}`,
    ...powerText(boat, plan).slice(1),
    '',
    ...fed.flatMap(({ what, fact, why }) => [
      ...lines(`${what}: ${fact}.`, '- '),
      ...why.flatMap((words) => lines(words, '  ')),
    ]),
  ]
    .join('\n')
    .trimEnd()}\n`;
};
