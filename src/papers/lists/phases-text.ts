import { indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { cureWords, currencyOf } from './cure-words.ts';
import { printMoney } from './order-words.ts';
import { type PhaseRow, type PhasesRows, phaseRows } from './phase-rows.ts';
import { keepUnits } from './print-figure.ts';

const width = 80;

/** How many items and things to provide the plan’s text names; the paper names all. */
const told = 6;

const lines = (words: string, lead: string): string[] => textLines(keepUnits(words), { width, lead });

const rowLines = ({ what, fact }: PhaseRow): string[] => lines(`${what}: ${fact}.`, '- ');

export const rowsOfPhases = (boat: Boat, plan: Plan): PhasesRows | undefined =>
  phaseRows(indexBoat(boat), plan, currencyOf(boat));

const some = (rows: readonly PhaseRow[], most: number): string[] => [
  ...rows.slice(0, most).flatMap(rowLines),
  ...(rows.length > most ? [`- and ${rows.length - most} more, in phases.txt.`] : []),
];

const allLines = (boat: Boat, { phases, costs, more, cures, provide }: PhasesRows, most: number): string[] => [
  ...phases.flatMap(({ phase, says, rows }) => [
    ...lines(says, `Phase ${phase}: `),
    ...rows.filter(({ isDetail }) => isDetail === undefined || most > told).flatMap(rowLines),
  ]),
  ...lines(costs, ''),
  ...some(more, most),
  ...cures.flatMap((cure) => lines(cureWords(cure, currencyOf(boat)), '  Cure: ')),
  ...(provide.length === 0 ? [] : ['To provide early:']),
  ...some(provide, most),
];

/** What the plan's text says of the phases: each with what arrives and what it buys, what phasing costs, what to provide early; nothing where she has one. */
export const phasesText = (boat: Boat, plan: Plan): string[] => {
  const rows = rowsOfPhases(boat, plan);
  return rows === undefined ? [] : ['PHASES', ...allLines(boat, rows, told)];
};

const boughtLines = (boat: Boat, plan: Plan): string[] =>
  (plan.phases?.phases ?? []).flatMap(({ phase, buy }) => [
    '',
    `TO BUY IN PHASE ${phase}`,
    ...buy.flatMap(({ count, by, item, each }) => {
      const price =
        each === undefined ? 'price to be asked' : `${printMoney(Math.round(count * each))} ${currencyOf(boat)}`;
      return lines(`${count} ${by === 'metre' ? 'm' : 'x'} ${item}: ${price}.`, '[ ] ');
    }),
  ]);

/** The phases as text of 80 columns, with what each buys, to tick. */
export const phasesPaper = (boat: Boat, plan: Plan): string => {
  const rows = rowsOfPhases(boat, plan);
  const said =
    rows === undefined
      ? ['Everything comes in one phase.']
      : [...allLines(boat, rows, Number.POSITIVE_INFINITY), ...boughtLines(boat, plan)];
  return `${[`PHASES, ${boat.name}`, ...said].join('\n')}\n`;
};
