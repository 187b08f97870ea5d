import type { Boat, Kit } from '../../core/boat/boat-schema.ts';
import type { EditCall } from '../../core/boat/history.ts';
import { idForName } from '../../core/boat/id-of-name.ts';
import { findSheets } from '../../core/facts/sheets/find-sheets.ts';
import { typicalSheets } from '../../core/facts/sheets/index.ts';
import { editOf, saysOf } from './places-table.ts';
import { type Read, readChoice, readName, readNumber } from './read-cell.ts';
import type { BoatTable, CellChoice, TableRow } from './table-shape.ts';

const fates = [
  { value: 'stays', says: 'stays' },
  { value: 'goes', says: 'goes' },
  { value: 'comes', says: 'comes' },
] as const;

const placesOf = ({ places }: Boat): CellChoice[] => places.map(({ id, name }) => ({ value: id, says: name }));

/** The sheets a new row may name: those of the boat first, then the typical ones. */
const sheetsOf = ({ sheets }: Boat): CellChoice[] => {
  const own = new Set(sheets.map(({ id }) => id));
  return [...sheets, ...typicalSheets.filter(({ id }) => !own.has(id))].map(({ id, name }) => ({
    value: id,
    says: name,
  }));
};

const rowOf = (unit: Kit, boat: Boat): TableRow => ({
  id: unit.id,
  cells: {
    name: unit.name,
    sheet: saysOf(
      boat.sheets.map(({ id, name }) => ({ value: id, says: name })),
      unit.sheet,
    ),
    fate: unit.fate,
    place: saysOf(placesOf(boat), unit.place),
    phase: String(unit.phase ?? 1),
  },
  sortsBy: { phase: unit.phase ?? 1 },
});

const put: BoatTable['put'] = (boat, { row: unit, column }, text) => {
  const found = boat.kit.find(({ id }) => id === unit);
  if (found === undefined) return { wrong: 'This unit is no longer there.' };
  const phase = found.phase === undefined ? {} : { phase: found.phase };
  switch (column) {
    case 'name':
      return editOf(readName(text), (name) => ({ edit: 'name-unit', params: { unit, name } }));
    case 'fate':
      return editOf(readChoice(text, fates), (fate) => ({ edit: 'set-fate', params: { unit, fate, ...phase } }));
    case 'place':
      return editOf(readChoice(text, placesOf(boat)), (place) => ({ edit: 'move-unit', params: { unit, place } }));
    case 'phase':
      return editOf(readNumber(text, { unit: '', least: 1, most: 9 }), (asked) => ({
        edit: 'set-fate',
        params: { unit, fate: found.fate, ...(asked === 1 ? {} : { phase: Math.round(asked) }) },
      }));
    default:
      return { wrong: 'A unit keeps its sheet: replace the unit, or edit its sheet on its card.' };
  }
};

/** A sheet by its name or id, or by plain words for what the unit is. */
const readSheet = (boat: Boat, text: string): Read<string> => {
  const named = readChoice(text, sheetsOf(boat));
  if (!('wrong' in named)) return named;
  const [first] = findSheets(text);
  return first === undefined
    ? { wrong: `No sheet is known for “${text.trim()}”. Write what it is in plain words, for example “VHF radio”.` }
    : { value: first.sheet.id };
};

const add: BoatTable['add'] = (boat, { name = '', sheet = '', fate = '', place = '', phase = '' }) => {
  if (sheet.trim() === '' && name.trim() === '') return { wrong: 'Say what the unit is, in plain words.' };
  const ofSheet = readSheet(boat, sheet.trim() === '' ? name : sheet);
  if ('wrong' in ofSheet) return ofSheet;
  const at = place.trim() === '' ? { value: boat.places[0]?.id ?? '' } : readChoice(place, placesOf(boat));
  if ('wrong' in at) return at;
  if (at.value === '') return { wrong: 'There is no place aboard yet: add one at the step Boat.' };
  const becomes = fate.trim() === '' ? { value: 'comes' as const } : readChoice(fate, fates);
  if ('wrong' in becomes) return becomes;
  const inPhase = phase.trim() === '' ? { value: 1 } : readNumber(phase, { unit: '', least: 1, most: 9 });
  if ('wrong' in inPhase) return inPhase;
  const called = name.trim() === '' ? saysOf(sheetsOf(boat), ofSheet.value) : name.trim();
  const params: Kit = {
    id: idForName(boat, called, 'unit'),
    name: called,
    sheet: ofSheet.value,
    fate: becomes.value,
    ...(inPhase.value === 1 ? {} : { phase: Math.round(inPhase.value) }),
    place: at.value,
  };
  return { edits: [{ edit: 'add-unit', params } satisfies EditCall] };
};

/** Every unit: what it is, what becomes of it, where it stands. */
export const kitTable = (boat: Boat): BoatTable => ({
  id: 'kit',
  says: 'kit',
  columns: [
    { id: 'name', says: 'unit', hint: 'depth sensor' },
    { id: 'sheet', says: 'what it is', choices: sheetsOf(boat), isFixed: true, hint: 'thing that hears AIS' },
    { id: 'fate', says: 'what becomes of it', choices: fates },
    { id: 'place', says: 'place', choices: placesOf(boat) },
    { id: 'phase', says: 'phase', isFigure: true },
  ],
  rowsOf: (now) => now.kit.map((unit) => rowOf(unit, now)),
  put,
  add,
  remove: (_, unit) => ({ edits: [{ edit: 'remove-unit', params: { unit } }] }),
});
