import type { Boat } from '../../core/boat/boat-schema.ts';
import type { EnergyDay, Plan } from '../../core/plan-shape.ts';
import { lasting } from '../../core/rules/energy/day-words.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { keepUnits } from '../lists/print-figure.ts';
import { type EnergyDayRows, type EnergyUnitRow, energyDays } from './energy-days.ts';
import { energySays } from './energy-says.ts';

const width = 80;

const lines = (words: string, lead = ''): string[] => textLines(keepUnits(words), { width, lead });

/** The bank that is empty first in a day after the refit. */
const firstEmpty = ({ banks }: EnergyDay): string => {
  const last = Math.max(...banks.map(({ phase }) => phase));
  const [first] = banks
    .filter(({ phase, enduranceH }) => phase === last && enduranceH !== undefined)
    .sort((one, other) => (one.enduranceH ?? 0) - (other.enduranceH ?? 0));
  return first?.enduranceH === undefined
    ? ''
    : ` With nothing charging ${first.bank} lasts ${lasting(first.enduranceH)}.`;
};

/** What the plan's text says of energy: each day with what it takes, then what is to be said of the whole. */
export const energyText = (boat: Boat, plan: Plan): string[] => {
  const days = energyDays(boat, plan);
  if (plan.energy.every(({ byKit }) => byKit.length === 0)) return [];
  return [
    'THE ENERGY OF A DAY',
    ...plan.energy.flatMap((day, at) => lines(`${days[at]?.name}: ${days[at]?.takes}.${firstEmpty(day)}`, '- ')),
    ...energySays(boat, plan).flatMap((words) => lines(words)),
  ];
};

const columns = [6, 8, 8, 8, 8] as const;

const rowLines = (first: string, figures: readonly string[]): string[] => {
  const right = figures.map((figure, at) => figure.padStart(columns[at] ?? 8)).join('');
  const room = width - right.length - 1;
  const wrapped = textLines(first, { width: room, lead: '' });
  return wrapped.map((line, at) => (at === 0 ? `${line.padEnd(room)} ${right}`.trimEnd() : `  ${line}`));
};

const unitLines = ({ name, remark, hours, beforeAh, afterAh, afterWh, beforeWh, saves }: EnergyUnitRow): string[] => [
  ...rowLines(remark === undefined ? name : `${name} (${remark})`, [hours, beforeAh, afterAh, beforeWh, afterWh]),
  ...(saves === '' ? [] : lines(`off all day: its bank lasts ${saves} longer`, '  ')),
];

const dayLines = ({ name, takes, takesWh, says, units }: EnergyDayRows): string[] => [
  name.toUpperCase(),
  ...lines(`${takes}; ${takesWh}.`),
  ...says.flatMap((words) => lines(words)),
  ...(units.length === 0 ? [] : ['', ...rowLines('unit', ['h', 'Ah was', 'Ah is', 'Wh was', 'Wh is'])]),
  ...units.flatMap(unitLines),
];

/** Everything there is to say of the energy of a day as text of 80 columns: each day with its banks and its units. */
export const energyPaper = (boat: Boat, plan: Plan): string =>
  `${[
    `THE ENERGY OF A DAY, ${boat.name}`,
    ...energySays(boat, plan).map((words) => lines(words).join('\n')),
    ...energyDays(boat, plan).map((day) => dayLines(day).join('\n')),
  ]
    .join('\n\n')
    .trimEnd()}\n`;
