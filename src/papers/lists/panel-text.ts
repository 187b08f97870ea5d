import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { cardBoat } from '../cards/card-boat.ts';
import { bankCautions, type CautionWords, wiringCautions } from '../power/caution-words.ts';
import { bankRows } from './bank-rows.ts';
import { type CircuitRow, type PanelRow, panelRows } from './panel-rows.ts';
import { keepUnits, printCount } from './print-figure.ts';

const width = 80;

const lines = (words: string, lead: string): string[] => textLines(keepUnits(words), { width, lead });

const over = ({ circuits }: PanelRow): readonly CircuitRow[] => circuits.filter(({ isOver }) => isOver);

const shortWords = ({ what, circuits, freeWays, short, facts }: PanelRow): string => {
  const free = circuits.filter(({ isFree }) => isFree).length + (freeWays ?? 0);
  const counted = freeWays === undefined && free === 0 ? 'free places not counted' : `${free} free`;
  const room = short > 0 ? `${short} short` : counted;
  return `${what}: ${facts[0] ?? ''} ${printCount(circuits.length, 'circuit')}, ${room}.`;
};

/** What the plan's text says of the panels: a line each, then the circuits that draw more than they let through. */
export const panelText = (boat: Boat, plan: Plan): string[] => {
  const rows = panelRows(cardBoat(boat), plan);
  if (rows.length === 0) return [];
  return [
    'PANELS',
    ...rows.flatMap((row) => [
      ...lines(shortWords(row), '- '),
      ...over(row).flatMap(({ circuit, fact }) => lines(`${circuit}: ${fact}.`, '  ')),
    ]),
  ];
};

const cautionLines = (cautions: readonly CautionWords[]): string[] =>
  cautions.flatMap(({ title, says, decides }) =>
    lines(`${title}: ${says}${decides === undefined ? '' : ` Decides: ${decides}.`}`, '! '),
  );

const circuitLines = ({ circuit, name, fact }: CircuitRow): string[] =>
  lines(`${circuit}${name === undefined ? '' : ` (${name})`}: ${fact}.`, '  ');

/** Where all negatives meet, and the mains that is only kept away from. */
const besideLines = (boat: Boat, { negativeAt, mains }: Plan): string[] => {
  const named = boat.places.find(({ id }) => id === negativeAt)?.name ?? negativeAt;
  const meet =
    named === undefined
      ? 'Nobody has said where all negatives meet; there must be one common point.'
      : `All negatives meet at one point: ${named}.`;
  const near = [
    ...mains.chargers,
    ...(mains.ways.length === 0 ? [] : [`beside ${printCount(mains.ways.length, 'way')}`]),
  ];
  return [
    ...lines(meet, ''),
    ...(near.length === 0
      ? []
      : lines(`Mains is aboard (${near.join(', ')}). It is planned nowhere here: keep away from it.`, '')),
  ];
};

/** The fuse and breaker table as text of 80 columns: cautions first, banks, then each panel with its circuits. */
export const panelPaper = (boat: Boat, plan: Plan): string => {
  const index = cardBoat(boat);
  const rows = panelRows(index, plan);
  const banks = bankRows(index, plan);
  return `${[
    `PANELS, ${boat.name}`,
    ...cautionLines([...bankCautions(plan), ...wiringCautions()]),
    '',
    ...banks.flatMap(({ what, fact }) => lines(`${what}: ${fact}.`, '- ')),
    ...besideLines(boat, plan),
    ...rows.flatMap(({ what, facts, circuits }) => [
      '',
      what.toUpperCase(),
      ...facts.flatMap((fact) => lines(fact, '')),
      ...circuits.flatMap(circuitLines),
    ]),
  ]
    .join('\n')
    .trimEnd()}\n`;
};
