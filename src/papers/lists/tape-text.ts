import { indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { currencyOf } from './cure-words.ts';
import { printMoney, someWords } from './order-words.ts';
import { keepUnits, printCost } from './print-figure.ts';
import { type TapeRow, tapeRows } from './tape-rows.ts';

const width = 80;
const namedLines = 3;

export const rowsToTape = (boat: Boat, plan: Plan): TapeRow[] =>
  tapeRows(indexBoat(boat), plan, { currency: currencyOf(boat), units: 'both' });

/**
 * What a layout other than the one held could have saved, as a sum over the buses; a bus whose layout was never held against
 * others is named, for its sum is not known.
 */
const elsewhere = (boat: Boat, { buses }: Pick<Plan, 'buses'>): string => {
  const currency = currencyOf(boat);
  const known = buses.filter(({ layout }) => layout.bound > 0);
  const gap = known.reduce((sum, { layout }) => sum + Math.max(0, layout.cost - layout.bound), 0);
  const unknown = buses
    .filter(({ layout }) => layout.bound === 0)
    .map(({ id }) => boat.buses.find((bus) => bus.id === id)?.name ?? id);
  const sum =
    gap === 0
      ? 'No other layout is cheaper by the lengths as entered.'
      : `Another layout could have saved ${printCost({ cost: gap, currency })} at most by the lengths as entered.`;
  return [
    ...(known.length === 0 ? [] : [sum]),
    ...(unknown.length === 0 ? [] : [`Not compared with others: the layout of ${someWords(unknown, namedLines)}.`]),
  ].join(' ');
};

/** The tape list as text of 80 columns: what to tape and to prove before buying, most money at stake first. */
export const tapeText = (boat: Boat, plan: Plan): string => {
  const currency = currencyOf(boat);
  const rows = rowsToTape(boat, plan);
  const intro =
    rows.length === 0
      ? 'Nothing that is not yet taped or seen could change the order.'
      : 'With the layout held, only these could still change the order. After them it is sure: the cable covers every line, and the limits hold.';
  return `${[
    `TAPE LIST, ${boat.name}`,
    ...textLines(`${intro} ${elsewhere(boat, plan)}`, { width, lead: '' }),
    '',
    ...rows.flatMap(({ todo, answer, lines, atStake }) => [
      ...textLines(keepUnits(`${todo}. At stake: ${printMoney(atStake)} ${currency}.`), { width, lead: '[ ] ' }),
      ...textLines(keepUnits(answer), { width, lead: '    ' }),
      ...textLines(`For ${someWords(lines, namedLines)}.`, { width, lead: '    ' }),
    ]),
  ]
    .join('\n')
    .trimEnd()}\n`;
};
