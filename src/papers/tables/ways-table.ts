import type { Boat, Way } from '../../core/boat/boat-schema.ts';
import { freeId } from '../../core/boat/every-id.ts';
import type { EditCall } from '../../core/boat/history.ts';
import { editOf, saysOf } from './places-table.ts';
import { readChoice, readLengthM, readNumber } from './read-cell.ts';
import type { BoatTable, CellChoice, Put, TableRow } from './table-shape.ts';

const hows = [
  { value: 'taped', says: 'taped' },
  { value: 'papers', says: 'from papers' },
  { value: 'guessed', says: 'guessed' },
] as const;
const kinds = (['conduit', 'open', 'tray', 'mast', 'gland'] as const).map((value) => ({ value, says: value }));
const knowns = [
  { value: 'pulled', says: 'line pulled through' },
  { value: 'seen', says: 'seen' },
  { value: 'assumed', says: 'assumed' },
] as const;
const nothing = { value: 'nothing', says: 'nothing' } as const;
const throughs = [
  nothing,
  { value: 'deck', says: 'the deck' },
  { value: 'watertight', says: 'watertight bulkhead' },
  { value: 'fire', says: 'fire bulkhead' },
  { value: 'plain', says: 'plain bulkhead' },
] as const;

const choicesOf = ({ places }: Boat): CellChoice[] => places.map(({ id, name }) => ({ value: id, says: name }));

const rowOf = (way: Way, names: ReadonlyMap<string, string>): TableRow => ({
  id: way.id,
  cells: {
    from: names.get(way.ends[0]) ?? way.ends[0],
    to: names.get(way.ends[1]) ?? way.ends[1],
    length: `${way.length.valueM.toFixed(2)} m`,
    how: saysOf(hows, way.length.how),
    kind: way.kind,
    known: saysOf(knowns, way.known),
    bore: way.bore === undefined ? '' : `${way.bore.mm} mm`,
    through: saysOf(throughs, way.through ?? 'nothing'),
    hours: way.hours === undefined ? '' : `${way.hours} h`,
  },
  sortsBy: { length: way.length.valueM, bore: way.bore?.mm ?? 0, hours: way.hours ?? 0 },
});

type ChangeWay = Extract<EditCall, { edit: 'change-way' }>['params'];

const putLength = (found: Way, text: string): Put =>
  // a length that is typed was measured; how else it is known is said in the column beside it
  editOf(readLengthM(text), (metresM) => ({
    edit: 'tape-length',
    params: { way: found.id, length: { valueM: Math.round(metresM * 1000) / 1000, how: 'taped' } },
  }));

const putBore = (way: string, text: string): Put => {
  if (text.trim() === '') return { edits: [{ edit: 'change-way', params: { way, forget: ['bore'] } }] };
  const bare = /^\d+([.,]\d+)?$/.test(text.trim()) ? `${text.trim()} mm` : text;
  return editOf(readLengthM(bare), (boreM) => ({
    edit: 'change-way',
    params: { way, bore: { mm: Math.round(boreM * 10_000) / 10, how: 'taped' } },
  }));
};

const put: BoatTable['put'] = (boat, { row: way, column }, text) => {
  const found = boat.ways.find(({ id }) => id === way);
  if (found === undefined) return { wrong: 'This way is no longer there.' };
  const change = (params: Omit<ChangeWay, 'way'>): EditCall => ({ edit: 'change-way', params: { way, ...params } });
  switch (column) {
    case 'length':
      return putLength(found, text);
    case 'how':
      return editOf(readChoice(text, hows), (how) => ({
        edit: 'tape-length',
        params: { way, length: { valueM: found.length.valueM, how } },
      }));
    case 'kind':
      return editOf(readChoice(text, kinds), (kind) => change({ kind }));
    case 'known':
      return editOf(readChoice(text, knowns), (known) => change({ known }));
    case 'bore':
      return putBore(way, text);
    case 'through':
      return editOf(readChoice(text.trim() === '' ? 'nothing' : text, throughs), (through) =>
        through === 'nothing' ? change({ forget: ['through'] }) : change({ through }),
      );
    case 'hours':
      if (text.trim() === '') return { edits: [change({ forget: ['hours'] })] };
      return editOf(readNumber(text, { unit: 'h', least: 0, most: 1000 }), (hours) => change({ hours }));
    default:
      return { wrong: 'A way keeps its ends: take it out and add another.' };
  }
};

const add: BoatTable['add'] = (boat, cells) => {
  const [from, to] = [cells.from, cells.to].map((text = '') => readChoice(text, choicesOf(boat)));
  if (from === undefined || to === undefined) return { wrong: 'A new way needs both its ends.' };
  if ('wrong' in from) return { wrong: `It begins at no place of the boat. ${from.wrong}` };
  if ('wrong' in to) return { wrong: `It ends at no place of the boat. ${to.wrong}` };
  const id = freeId(boat, `${from.value}-to-${to.value}`.slice(0, 60));
  const edits: EditCall[] = [{ edit: 'add-way', params: { id, ends: [from.value, to.value] } }];
  const grown: Boat = {
    ...boat,
    ways: [
      ...boat.ways,
      { id, ends: [from.value, to.value], length: { valueM: 1, how: 'guessed' }, kind: 'open', known: 'assumed' },
    ],
  };
  for (const [column, text] of Object.entries(cells)) {
    // a guess that nobody made is made from where the ends are
    if (['from', 'to'].includes(column) || text.trim() === '') continue;
    if (column === 'how' && (cells.length ?? '').trim() === '') continue;
    const own = put(grown, { row: id, column }, text);
    if ('wrong' in own) return own;
    edits.push(...own.edits);
  }
  return { edits };
};

/** The ways a cable can take: how long, how well known, how wide. */
export const waysTable = (boat: Boat): BoatTable => ({
  id: 'ways',
  says: 'ways',
  columns: [
    { id: 'from', says: 'from', choices: choicesOf(boat), isFixed: true },
    { id: 'to', says: 'to', choices: choicesOf(boat), isFixed: true },
    { id: 'length', says: 'length', isFigure: true, hint: '2.35 m or 7 ft 9' },
    { id: 'how', says: 'known by', choices: hows },
    { id: 'kind', says: 'kind', choices: kinds },
    { id: 'known', says: 'looked at', choices: knowns },
    { id: 'bore', says: 'bore', isFigure: true, hint: '25 mm or 1 in' },
    { id: 'through', says: 'through', choices: throughs },
    { id: 'hours', says: 'hours to pull', isFigure: true },
  ],
  rowsOf: ({ ways, places }) => {
    const names = new Map(places.map(({ id, name }) => [id, name]));
    return ways.map((way) => rowOf(way, names));
  },
  put,
  add,
  remove: (_, way) => ({ edits: [{ edit: 'remove-way', params: { way } }] }),
});
