import type { Boat, Place } from '../../core/boat/boat-schema.ts';
import type { EditCall } from '../../core/boat/history.ts';
import { idForName } from '../../core/boat/id-of-name.ts';
import { type Read, readChoice, readName, readNumber, readSpotM, readYesNo } from './read-cell.ts';
import type { BoatTable, CellChoice, Put, TableRow } from './table-shape.ts';

const exposures = (['dry', 'damp', 'spray', 'weather', 'engine', 'bilge'] as const).map((value) => ({
  value,
  says: value,
}));

const reaches = [
  { value: 'open', says: 'open' },
  { value: 'panel', says: 'behind a panel' },
  { value: 'hard', says: 'hard to reach' },
  { value: 'aloft', says: 'aloft' },
] as const;

/** What the boat file says of a choice, in words. */
export const saysOf = (choices: readonly CellChoice[], value: string): string =>
  choices.find((choice) => choice.value === value)?.says ?? value;

const metres = (valueM: number): string => `${valueM.toFixed(2)} m`;

const rowOf = ({ id, name, xM, yM, zM, exposure, reach, tees, spares = 0 }: Place): TableRow => ({
  id,
  cells: {
    name,
    x: metres(xM),
    y: metres(yM),
    z: metres(zM),
    exposure,
    reach: saysOf(reaches, reach),
    tees: tees ? 'yes' : 'no',
    spares: String(spares),
  },
  sortsBy: { x: xM, y: yM, z: zM, spares },
});

/** The edit of what was read, or what is wrong with it. */
export const editOf = <Value>(read: Read<Value>, callOf: (value: Value) => EditCall): Put =>
  'wrong' in read ? read : { edits: [callOf(read.value)] };

const put: BoatTable['put'] = (_, { row: place, column }, text) => {
  const change = (params: Omit<Extract<EditCall, { edit: 'change-place' }>['params'], 'place'>): EditCall => ({
    edit: 'change-place',
    params: { place, ...params },
  });
  switch (column) {
    case 'name':
      return editOf(readName(text), (name) => change({ name }));
    case 'x':
    case 'y':
    case 'z':
      return editOf(readSpotM(text), (valueM) => ({
        edit: 'move-places',
        params: { places: [{ place, [`${column}M`]: valueM }] },
      }));
    case 'exposure':
      return editOf(readChoice(text, exposures), (exposure) => change({ exposure }));
    case 'reach':
      return editOf(readChoice(text, reaches), (reach) => change({ reach }));
    case 'tees':
      return editOf(readYesNo(text), (tees) => change({ tees }));
    default:
      return editOf(readNumber(text === '' ? '0' : text, { unit: '', least: 0, most: 20 }), (spares) =>
        change({ spares: Math.round(spares) }),
      );
  }
};

/** The middle of the boat, where a new place stands until somebody says where it is. */
const middle = ({ hull }: Boat) => ({ xM: Math.round(hull.lengthM * 50) / 100, yM: 0, zM: 0.5 });

const add: BoatTable['add'] = (boat, cells) => {
  const name = readName(cells.name ?? '');
  if ('wrong' in name) return { wrong: 'A new place needs a name.' };
  const place: Place = {
    id: idForName(boat, name.value, 'place'),
    name: name.value,
    ...middle(boat),
    exposure: 'dry',
    reach: 'open',
    tees: true,
  };
  const edits: EditCall[] = [{ edit: 'add-place', params: place }];
  for (const [column, text] of Object.entries(cells)) {
    if (column === 'name' || text.trim() === '') continue;
    const own = put(boat, { row: place.id, column }, text);
    if ('wrong' in own) return own;
    edits.push(...own.edits);
  }
  return { edits };
};

/** The places of the boat: where each is, what reaches it and who can. */
export const placesTable: BoatTable = {
  id: 'places',
  says: 'places',
  columns: [
    { id: 'name', says: 'place', hint: 'chart table' },
    { id: 'x', says: 'forward of the transom', isFigure: true, hint: '5.20 m or 17 ft 1' },
    { id: 'y', says: 'to starboard', isFigure: true, hint: '-0.80 m is to port' },
    { id: 'z', says: 'above the water', isFigure: true, hint: '1.40 m' },
    { id: 'exposure', says: 'exposure', choices: exposures },
    { id: 'reach', says: 'reach', choices: reaches },
    {
      id: 'tees',
      says: 'tees',
      choices: [
        { value: 'yes', says: 'yes' },
        { value: 'no', says: 'no' },
      ],
    },
    { id: 'spares', says: 'spare tees', isFigure: true },
  ],
  rowsOf: ({ places }) => places.map(rowOf),
  put,
  add,
  remove: (_, place) => ({ edits: [{ edit: 'remove-place', params: { place } }] }),
};
