import type { Boat } from '../../core/boat/boat-schema.ts';
import type { EditCall } from '../../core/boat/history.ts';
import { idForName } from '../../core/boat/id-of-name.ts';
import type { Circuit } from '../../core/boat/supply.ts';
import { editOf, saysOf } from './places-table.ts';
import { type Read, readChoice, readName, readNumber } from './read-cell.ts';
import type { BoatTable, CellChoice, TableRow } from './table-shape.ts';

const kinds = [
  { value: 'breaker', says: 'breaker' },
  { value: 'slow-breaker', says: 'slow breaker' },
  { value: 'fuse', says: 'fuse' },
  { value: 'live-fuse', says: 'fuse that stays live' },
] as const;

/** Whatever a circuit may feed: each supply port, each bus, each panel and converter. */
const fedChoices = ({ kit, sheets, buses, supply }: Boat): CellChoice[] => {
  const sheetOf = new Map(sheets.map((sheet) => [sheet.id, sheet]));
  const ports = kit.flatMap((unit) => {
    const own = (sheetOf.get(unit.sheet)?.ports ?? []).filter(
      ({ protocol, role }) => protocol === 'dc' && role !== 'talk',
    );
    return own.map(({ id }) => ({
      value: `${unit.id}.${id}`,
      says: own.length === 1 ? unit.name : `${unit.name} (${id})`,
    }));
  });
  return [
    ...ports,
    ...[...buses].map(({ id, name }) => ({ value: id, says: name })),
    ...[...supply.panels, ...supply.dcdc].map(({ id }) => ({ value: id, says: id })),
  ];
};

/** Several names with semicolons or commas between them; a name may have commas of its own. */
const readFed = (boat: Boat, text: string): Read<string[]> => {
  const choices = fedChoices(boat);
  const found: string[] = [];
  const read = (part: string): boolean => {
    const one = readChoice(part, choices);
    if ('wrong' in one) return false;
    found.push(one.value);
    return true;
  };
  for (const part of text.split(';')) {
    const bare = part.trim();
    if (bare === '' || read(bare)) continue;
    const wrong = bare
      .split(',')
      .map((one) => one.trim())
      .find((one) => one !== '' && !read(one));
    if (wrong !== undefined)
      return { wrong: `“${wrong}” is nothing aboard that a circuit feeds. Put ; between names.` };
  }
  return { value: [...new Set(found)] };
};

const as = <From, To>(read: Read<From>, made: (value: From) => To): Read<To> =>
  'wrong' in read ? read : { value: made(read.value) };

const rowOf = (panel: string, circuit: Circuit, choices: readonly CellChoice[]): TableRow => ({
  id: `${panel}.${circuit.id}`,
  cells: {
    name: circuit.name ?? circuit.id,
    panel,
    rating: `${circuit.ratingA} A`,
    kind: saysOf(kinds, circuit.kind),
    feeds: circuit.feeds.map((one) => saysOf(choices, one)).join('; '),
  },
  sortsBy: { rating: circuit.ratingA },
});

/** What each column that is typed in changes of a circuit. */
const readers: Readonly<Record<string, (boat: Boat, text: string) => Read<object>>> = {
  name: (_, text) => as(readName(text), (name) => ({ name: name.slice(0, 120) })),
  rating: (_, text) => as(readNumber(text, { unit: 'A', least: 0.1, most: 10_000 }), (ratingA) => ({ ratingA })),
  kind: (_, text) => as(readChoice(text, kinds), (kind) => ({ kind })),
  feeds: (boat, text) => as(readFed(boat, text), (feeds) => ({ feeds })),
};

const put: BoatTable['put'] = (boat, { row, column }, text) => {
  const [panel = '', circuit = ''] = row.split('.');
  const read = readers[column]?.(boat, text) ?? {
    wrong: 'A circuit stays in its panel: take it out and add one in the other.',
  };
  return editOf(read, (params) => ({ edit: 'change-circuit', params: { panel, circuit, ...params } }));
};

const add: BoatTable['add'] = (boat, { name = '', panel = '', rating = '', kind = '', feeds = '' }) => {
  const panels = boat.supply.panels.map(({ id }) => ({ value: id, says: id }));
  const own =
    panel.trim() === '' && panels.length === 1 ? { value: panels[0]?.value ?? '' } : readChoice(panel, panels);
  if ('wrong' in own) return { wrong: `Say in which panel it is. ${own.wrong}` };
  const amps = readNumber(rating, { unit: 'A', least: 0.1, most: 10_000 });
  if ('wrong' in amps) return amps;
  const device = kind.trim() === '' ? { value: 'breaker' as const } : readChoice(kind, kinds);
  if ('wrong' in device) return device;
  const fed = readFed(boat, feeds);
  if ('wrong' in fed) return fed;
  const id = idForName(boat, name, `${own.value}-circuit`);
  return {
    edits: [
      {
        edit: 'add-circuit',
        params: {
          panel: own.value,
          circuit: {
            id,
            ...(name.trim() === '' ? {} : { name: name.trim().slice(0, 120) }),
            ratingA: amps.value,
            kind: device.value,
            feeds: [],
          },
        },
      },
      // by a change, which takes what it feeds off every other circuit
      ...(fed.value.length === 0
        ? []
        : [
            {
              edit: 'change-circuit',
              params: { panel: own.value, circuit: id, feeds: fed.value },
            } satisfies EditCall,
          ]),
    ],
  };
};

/** Every breaker and fuse: in which panel, how large, what it feeds. */
export const circuitsTable = (boat: Boat): BoatTable => ({
  id: 'circuits',
  says: 'feeds',
  columns: [
    { id: 'name', says: 'circuit', hint: 'instruments' },
    {
      id: 'panel',
      says: 'panel',
      choices: boat.supply.panels.map(({ id }) => ({ value: id, says: id })),
      isFixed: true,
    },
    { id: 'rating', says: 'rating', isFigure: true, hint: '5 A' },
    { id: 'kind', says: 'kind', choices: kinds },
    { id: 'feeds', says: 'feeds', hint: 'VHF radio; backbone' },
  ],
  rowsOf: (now) => {
    const choices = fedChoices(now);
    return now.supply.panels.flatMap((panel) => panel.circuits.map((circuit) => rowOf(panel.id, circuit, choices)));
  },
  put,
  add,
  remove: (_, row) => {
    const [panel = '', circuit = ''] = row.split('.');
    return { edits: [{ edit: 'remove-circuit', params: { panel, circuit } }] };
  },
});
