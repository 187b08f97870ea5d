import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { cardBoat } from '../cards/card-boat.ts';
import { keepUnits, printCount } from '../lists/print-figure.ts';
import { numberRows } from './number-rows.ts';
import { type PairRow, pairRows } from './pair-rows.ts';
import { settingSentence, settingUnits } from './setting-rows.ts';
import { sourceRows, sourceSentence } from './source-rows.ts';

const width = 80;

const lines = (words: string, lead: string): string[] => textLines(keepUnits(words), { width, lead });

/** What the plan’s text says of sources: those of which one has to be chosen, then how much there is to set. */
export const sourcesText = (boat: Boat, plan: Plan): string[] => {
  if (plan.sources.length === 0) return [];
  const index = cardBoat(boat);
  const open = sourceRows({ ...index, boat }, plan).filter(({ isChoice }) => isChoice);
  const numbers = numberRows(index, plan).filter(({ isOpen }) => isOpen);
  const units = settingUnits(index, plan);
  return [
    'SOURCES AND SETTINGS',
    ...(open.length === 0 ? ['Every reading comes from one source, or all of them count.'] : []),
    ...open.flatMap((row) => lines(sourceSentence(row), '- ')),
    ...numbers.flatMap(({ what, fact }) => lines(`${what}: ${fact}.`, '- ')),
    ...lines(
      `${printCount(plan.settings.length, 'thing')} to set in ${printCount(units.length, 'unit')}, and ${printCount(plan.pairs.length, 'pair')} to join wire by wire: --out writes the tables.`,
      '',
    ),
  ];
};

/** The whole source plan as text of 80 columns. */
export const sourcesPaper = (boat: Boat, plan: Plan): string => {
  const index = cardBoat(boat);
  const rows = sourceRows({ ...index, boat }, plan);
  const numbers = numberRows(index, plan);
  return `${[
    `SOURCES, ${boat.name}`,
    ...(rows.length === 0 ? ['Nothing that is needed arrives yet.'] : []),
    ...rows.flatMap((row) => lines(sourceSentence(row), '- ')),
    ...(numbers.length === 0 ? [] : ['', 'Numbers']),
    ...numbers.flatMap(({ what, fact }) => lines(`${what}: ${fact}.`, '- ')),
  ].join('\n')}\n`;
};

/** What to set in each unit, a box to tick before each, as text of 80 columns. */
export const settingsPaper = (boat: Boat, plan: Plan): string => {
  const units = settingUnits(cardBoat(boat), plan);
  return `${[
    `SETTINGS, ${boat.name}`,
    ...lines(
      'What to switch on, off and choose in each unit. Change one thing, look at every screen, then the next; write down what stood there before.',
      '',
    ),
    ...units.flatMap(({ name, place, rows }) => [
      '',
      ...lines(`${name}, ${place}`, ''),
      ...rows.flatMap((row) => lines(settingSentence(row), '[ ] ')),
    ]),
  ].join('\n')}\n`;
};

const wireColumn = 34;

const pairLines = ({ label, talker, listener, speed, wires, open, shield, isUnknown }: PairRow): string[] => [
  '',
  ...lines(`${label === '' ? '' : `${label}: `}${talker} to ${listener}, ${speed}`, ''),
  ...wires.flatMap(({ from, to }) =>
    lines(to === undefined ? 'left open, insulated' : to, `[ ] ${from} `.padEnd(wireColumn, '.').concat(' ')),
  ),
  ...(isUnknown
    ? lines('The sheets do not say how these two are joined: look both up before you cut.', '    ')
    : open.flatMap((wire) => lines(`${wire}: left open, insulated`, '[ ] '))),
  ...lines(`shield: ${shield}`, '[ ] '),
];

/** Every pair wire by wire, as text of 80 columns. */
export const pairsPaper = (boat: Boat, plan: Plan): string => {
  const rows = pairRows(cardBoat(boat), plan);
  return `${[
    `PAIRS, ${boat.name}`,
    ...lines(
      rows.length === 0
        ? 'No pair and no maker’s own wire is planned.'
        : 'Talker on the left, listener on the right, by the marks of their makers. Switch both units off first. One talker on a pair; what is open is cut back and insulated, each wire by itself.',
      '',
    ),
    ...rows.flatMap(pairLines),
  ].join('\n')}\n`;
};
