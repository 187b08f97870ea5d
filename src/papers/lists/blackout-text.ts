import { indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { oneTerminator } from '../../core/facts/fallback-kit.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { type BlackoutRow, blackoutRows } from './blackout-rows.ts';
import { cureWords, currencyOf } from './cure-words.ts';
import { keepUnits, printCount } from './print-figure.ts';
import { vitalNames, vitalWords } from './vital-words.ts';

const width = 80;

/** The worst rows that the plan tells of; all stand in the table of the papers. */
const worstTold = 6;

const lines = (words: string, lead: string): string[] => textLines(keepUnits(words), { width, lead });

const takesWords = ({ takes, perhaps, vitals }: BlackoutRow): string => {
  const lost = [
    ...(takes === '' ? [] : [`takes ${takes}`]),
    ...(perhaps === '' ? [] : [`perhaps ${takes === '' ? 'takes ' : ''}${perhaps}`]),
    ...(vitals.some(({ of }) => of === 'radio') ? ['no radio can talk'] : []),
  ];
  return lost.join('; ');
};

const markOf = ({ vitals }: BlackoutRow): string =>
  vitals.length === 0
    ? ''
    : ` [single point: ${vitals.map(({ of, perhaps }) => `${vitalNames[of].name.toLowerCase()}${perhaps ? ' perhaps' : ''}`).join(', ')}]`;

const rowLines = (row: BlackoutRow): string[] =>
  lines(`${row.what.join('; ')}: ${takesWords(row)}.${markOf(row)}`, '- ');

const shortLines = (row: BlackoutRow): string[] => {
  const [first = '', ...others] = row.what;
  const more = others.length === 0 ? '' : ` (and ${others.length} more that do the same)`;
  return lines(`${first}${more}: ${row.loses.length} off their screens, ${row.short}.`, '- ');
};

const vitalLines = (boat: Boat, plan: Plan): string[] => {
  const index = indexBoat(boat);
  return plan.vitals.flatMap((vital) => {
    const { says, left } = vitalWords(index, plan, vital);
    return [
      ...lines(says, '- '),
      ...vital.cures.flatMap((cure) => lines(cureWords(cure, currencyOf(boat)), '  Cure: ')),
      ...(left === '' ? [] : lines(left, '  ')),
    ];
  });
};

const countWords = (failures: number, harmless: number): string =>
  `${printCount(failures, 'single failure')} looked at, each alone: ${harmless} take nothing off any screen.`;

/** What the plan's text says of failures: the single points, then the worst; nothing where nothing was looked at. */
export const blackoutText = (boat: Boat, plan: Plan): string[] => {
  if (plan.blackouts.length === 0 || plan.readings.length === 0) return [];
  const { rows, failures, harmless } = blackoutRows(indexBoat(boat), plan);
  return [
    'WHAT ONE FAILURE TAKES',
    ...lines(countWords(failures, harmless), ''),
    ...vitalLines(boat, plan),
    ...(rows.length === 0 ? [] : ['Worst first:']),
    ...rows.slice(0, worstTold).flatMap(shortLines),
  ];
};

/** The whole blackout table as text of 80 columns: single points first, then every failure that takes something, worst first. */
export const blackoutPaper = (boat: Boat, plan: Plan): string => {
  const { rows, failures, harmless } = blackoutRows(indexBoat(boat), plan);
  return `${[
    `WHAT ONE FAILURE TAKES, ${boat.name}`,
    ...lines(countWords(failures, harmless), ''),
    ...lines(`“Perhaps”: its bus is ${oneTerminator.says}.`, ''),
    ...lines('“2 of 3”: off two of the three screens that have it; without a number, off every one.', ''),
    '',
    ...vitalLines(boat, plan),
    '',
    ...rows.flatMap(rowLines),
  ].join('\n')}\n`;
};
