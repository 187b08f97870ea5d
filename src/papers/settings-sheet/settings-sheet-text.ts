import type { Boat } from '../../core/boat/boat-schema.ts';
import { shortName } from '../../core/boat/short-name.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { cardBoat } from '../cards/card-boat.ts';
import { keepUnits, printCount } from '../lists/print-figure.ts';
import { paperRows } from './paper-rows.ts';
import { seaRows } from './sea-rows.ts';
import { type TypedRow, typedRows } from './typed-rows.ts';

const lines = (words: string): string[] => textLines(keepUnits(words), { width: 80, lead: '- ' });

const valueWords = ({ what, type, also }: TypedRow): string => `${what} ${type}${also === '' ? '' : ` (${also})`}`;

/** Each unit with all that is typed into it, in one sentence. */
const unitLines = (rows: readonly TypedRow[]): string[] => {
  const byUnit = new Map<string, TypedRow[]>();
  for (const row of rows) byUnit.set(row.kit, [...(byUnit.get(row.kit) ?? []), row]);
  return [...byUnit.values()].flatMap((own) =>
    lines(`${shortName(own[0]?.unit ?? '')}: ${own.map(valueWords).join('; ')}.`),
  );
};

/** What a plan’s text says of settings by measure: papers first, then what to type unit by unit, what is missing counted. */
export const settingsSheetText = (boat: Boat, plan: Plan): string[] => {
  const index = cardBoat(boat);
  const open = paperRows(index.kit, plan).filter(({ isOpen }) => isOpen);
  const rows = typedRows(index, plan).filter(({ key }) => !key.endsWith(':none'));
  const ready = rows.filter(({ type, isMissing }) => type !== '' && !isMissing);
  const known = ready.filter(({ key }) => !key.endsWith(':screen-units'));
  const missing = rows.length - ready.length;
  const tried = seaRows(index.kit, plan);
  if (rows.length === 0 && open.length === 0) return [];
  return [
    'SETTINGS BY MEASURE',
    ...open.flatMap(({ what, stands, waits }) => lines(`Paper: ${what}: ${stands}; takes ${waits}.`)),
    ...unitLines(known),
    ...(missing === 0
      ? []
      : lines(`${printCount(missing, 'value')} more once the rest is measured, asked or looked up.`)),
    ...tried.flatMap(({ what, found }) => lines(`${what}: ${found}.`)),
  ];
};
