import type { Boat } from '../../core/boat/boat-schema.ts';
import type { EditCall } from '../../core/boat/history.ts';
import { idForName } from '../../core/boat/id-of-name.ts';
import type { Bank, Panel } from '../../core/boat/supply.ts';
import { editOf, saysOf } from './places-table.ts';
import { type Read, readChoice, readNumber } from './read-cell.ts';
import type { BoatTable, CellChoice, TableRow } from './table-shape.ts';

const placesOf = ({ places }: Boat): CellChoice[] => places.map(({ id, name }) => ({ value: id, says: name }));

const chemistries = [
  { value: 'flooded', says: 'flooded lead' },
  { value: 'agm', says: 'AGM' },
  { value: 'gel', says: 'gel' },
  { value: 'lifepo4', says: 'LiFePO4' },
  { value: 'other', says: 'other' },
] as const;
const uses = [
  { value: 'house', says: 'the house' },
  { value: 'start', says: 'starting' },
  { value: 'both', says: 'both' },
] as const;

const parted = [
  { value: 'switch', says: 'a switch' },
  { value: 'relay', says: 'a charging relay' },
  { value: 'diode', says: 'a diode' },
  { value: 'dcdc', says: 'a converter' },
  { value: 'apart', says: 'wholly apart' },
  { value: 'nothing', says: 'nothing' },
] as const;

const mainText = ({ main }: Bank): string => {
  if (main === undefined) return '';
  if (main.kind === 'none') return 'none';
  return `${main.kind}${main.ratingA === undefined ? '' : ` ${main.ratingA} A`}`;
};

/** A main fuse as `100 A`, `breaker 60 A`, `fuse` or `none`; what else is known of it stays. */
const readMain = (bank: Bank | undefined, text: string): Read<NonNullable<Bank['main']>> => {
  const [, kind = 'fuse', amps] = /^(fuse|breaker|none)?\s*(?:(\d+(?:[.,]\d+)?)\s*a?)?$/i.exec(text.trim()) ?? [];
  const bare = text.trim() === '' || !/^(fuse|breaker|none)?\s*(?:(\d+(?:[.,]\d+)?)\s*a?)?$/i.test(text.trim());
  if (bare) return { wrong: `“${text.trim()}” is no main fuse. Write for example “100 A”, “breaker 60 A” or “none”.` };
  if (kind.toLowerCase() === 'none') return { value: { kind: 'none' } };
  const was = bank?.main?.kind === 'none' ? {} : bank?.main;
  const rating = amps === undefined ? {} : { ratingA: Number(amps.replace(',', '.')) };
  return { value: { ...was, kind: kind.toLowerCase() === 'breaker' ? 'breaker' : 'fuse', ...rating } };
};

const bankRow = (bank: Bank, boat: Boat): TableRow => ({
  id: bank.id,
  cells: {
    id: bank.id,
    place: saysOf(placesOf(boat), bank.place),
    for: saysOf(uses, bank.for),
    chemistry: saysOf(chemistries, bank.chemistry),
    volts: `${bank.nominalV} V`,
    capacity: `${bank.capacityAh} Ah`,
    lowest: bank.lowestV === undefined ? '' : `${bank.lowestV} V`,
    main: mainText(bank),
    parted: bank.partedBy === undefined ? '' : saysOf(parted, bank.partedBy),
  },
  sortsBy: { volts: bank.nominalV, capacity: bank.capacityAh, lowest: bank.lowestV ?? 0 },
});

const volts = { unit: 'V', least: 1, most: 1000 } as const;

const putBank: BoatTable['put'] = (boat, { row: bank, column }, text) => {
  const change = (params: object): EditCall => ({ edit: 'change-bank', params: { bank, ...params } });
  switch (column) {
    case 'place':
      return editOf(readChoice(text, placesOf(boat)), (place) => change({ place }));
    case 'for':
      return editOf(readChoice(text, uses), (use) => change({ for: use }));
    case 'chemistry':
      return editOf(readChoice(text, chemistries), (chemistry) => change({ chemistry }));
    case 'volts':
      return editOf(readNumber(text, volts), (nominalV) => change({ nominalV }));
    case 'capacity':
      return editOf(readNumber(text, { unit: 'Ah', least: 1, most: 100_000 }), (capacityAh) => change({ capacityAh }));
    case 'lowest':
      if (text.trim() === '') return { edits: [change({ forget: ['lowestV'] })] };
      return editOf(readNumber(text, volts), (lowestV) => change({ lowestV }));
    case 'main':
      if (text.trim() === '') return { edits: [change({ forget: ['main'] })] };
      return editOf(
        readMain(
          boat.supply.banks.find(({ id }) => id === bank),
          text,
        ),
        (main) => change({ main }),
      );
    case 'parted':
      if (text.trim() === '') return { edits: [change({ forget: ['partedBy'] })] };
      return editOf(readChoice(text, parted), (partedBy) => change({ partedBy }));
    default:
      return { wrong: 'A bank keeps its name: take it out and add another.' };
  }
};

/** The volts most banks aboard have, for a new one. */
const usualVolts = ({ supply }: Boat): number => supply.banks[0]?.nominalV ?? 12;

const addBank: BoatTable['add'] = (boat, { id = '', place = '', ...cells }) => {
  const at = place.trim() === '' ? { value: boat.places[0]?.id ?? '' } : readChoice(place, placesOf(boat));
  if ('wrong' in at) return at;
  if (at.value === '') return { wrong: 'There is no place aboard yet: add one at the step Boat.' };
  const params: Bank = {
    id: idForName(boat, id, 'bank'),
    place: at.value,
    chemistry: 'agm',
    nominalV: usualVolts(boat),
    capacityAh: 100,
    for: 'house',
  };
  const edits: EditCall[] = [{ edit: 'add-bank', params }];
  for (const [column, text] of Object.entries(cells)) {
    if (text.trim() === '') continue;
    const own = putBank(boat, { row: params.id, column }, text);
    if ('wrong' in own) return own;
    edits.push(...own.edits);
  }
  return { edits };
};

/** The battery banks. */
export const banksTable = (boat: Boat): BoatTable => ({
  id: 'banks',
  says: 'banks',
  columns: [
    { id: 'id', says: 'bank', isFixed: true, hint: 'house' },
    { id: 'place', says: 'place', choices: placesOf(boat) },
    { id: 'for', says: 'for', choices: uses },
    { id: 'chemistry', says: 'chemistry', choices: chemistries },
    { id: 'volts', says: 'volts', isFigure: true },
    { id: 'capacity', says: 'capacity', isFigure: true },
    { id: 'lowest', says: 'lowest volts', isFigure: true },
    { id: 'main', says: 'main fuse', hint: '100 A, breaker 60 A, none' },
    { id: 'parted', says: 'parted from the house by', choices: parted },
  ],
  rowsOf: (now) => now.supply.banks.map((bank) => bankRow(bank, now)),
  put: putBank,
  add: addBank,
  remove: (_, bank) => ({ edits: [{ edit: 'remove-bank', params: { bank } }] }),
});

/** Whatever a panel may be fed from: a bank, a converter, or another panel. */
const sourcesOf = ({ supply: { banks, dcdc, panels } }: Boat): CellChoice[] =>
  [...banks, ...dcdc, ...panels].map(({ id }) => ({ value: id, says: id }));

const panelRow = (panel: Panel, boat: Boat): TableRow => ({
  id: panel.id,
  cells: {
    id: panel.id,
    place: saysOf(placesOf(boat), panel.place),
    from: panel.from,
    main: panel.mainA === undefined ? '' : `${panel.mainA} A`,
    circuits: String(panel.circuits.length),
    free: panel.freeWays === undefined ? '' : String(panel.freeWays),
  },
  sortsBy: { main: panel.mainA ?? 0, circuits: panel.circuits.length, free: panel.freeWays ?? 0 },
});

const putPanel: BoatTable['put'] = (boat, { row: panel, column }, text) => {
  const change = (params: object): EditCall => ({ edit: 'change-panel', params: { panel, ...params } });
  switch (column) {
    case 'place':
      return editOf(readChoice(text, placesOf(boat)), (place) => change({ place }));
    case 'from':
      return editOf(readChoice(text, sourcesOf(boat)), (from) => change({ from }));
    case 'main':
      if (text.trim() === '') return { edits: [change({ forget: ['mainA'] })] };
      return editOf(readNumber(text, { unit: 'A', least: 0.1, most: 10_000 }), (mainA) => change({ mainA }));
    case 'free':
      if (text.trim() === '') return { edits: [change({ forget: ['freeWays'] })] };
      return editOf(readNumber(text, { unit: '', least: 0, most: 200 }), (free) =>
        change({ freeWays: Math.round(free) }),
      );
    default:
      return { wrong: 'This follows from the rest: a panel keeps its name, its circuits stand in their own table.' };
  }
};

const addPanel: BoatTable['add'] = (boat, { id = '', place = '', from = '', circuits: _, ...cells }) => {
  const at = place.trim() === '' ? { value: boat.places[0]?.id ?? '' } : readChoice(place, placesOf(boat));
  if ('wrong' in at) return at;
  const fed = from.trim() === '' ? { value: boat.supply.banks[0]?.id ?? '' } : readChoice(from, sourcesOf(boat));
  if ('wrong' in fed) return fed;
  if (at.value === '' || fed.value === '')
    return { wrong: 'A panel needs a place and a bank to feed it: add them first.' };
  const panel: Panel = {
    id: idForName(boat, id, 'panel'),
    place: at.value,
    from: fed.value,
    circuits: [],
  };
  const edits: EditCall[] = [{ edit: 'add-panel', params: panel }];
  for (const [column, text] of Object.entries(cells)) {
    if (text.trim() === '') continue;
    const own = putPanel(boat, { row: panel.id, column }, text);
    if ('wrong' in own) return own;
    edits.push(...own.edits);
  }
  return { edits };
};

/** The panels and fuse boxes. */
export const panelsTable = (boat: Boat): BoatTable => ({
  id: 'panels',
  says: 'panels',
  columns: [
    { id: 'id', says: 'panel', isFixed: true, hint: 'dash' },
    { id: 'place', says: 'place', choices: placesOf(boat) },
    { id: 'from', says: 'fed from', choices: sourcesOf(boat) },
    { id: 'main', says: 'main', isFigure: true, hint: '40 A' },
    { id: 'circuits', says: 'circuits', isFigure: true, isFixed: true },
    { id: 'free', says: 'places free', isFigure: true },
  ],
  rowsOf: (now) => now.supply.panels.map((panel) => panelRow(panel, now)),
  put: putPanel,
  add: addPanel,
  remove: (_, panel) => ({ edits: [{ edit: 'remove-panel', params: { panel } }] }),
});
