import type { Boat } from '../../../core/boat/boat-schema.ts';
import { cardStepDeg } from '../../../core/fitting/sea/deviation-card.ts';
import type { Plan } from '../../../core/plan-shape.ts';
import { byCodeUnit } from '../../../core/units/by-code-unit.ts';
import { cardBoat } from '../../cards/card-boat.ts';
import { deviationDrawing } from '../../heading/deviation-drawing.ts';
import type { ListTable } from '../../table/list-table.ts';
import type { Block, Chapter } from '../binder-shape.ts';

const compassKinds: ReadonlySet<string | undefined> = new Set(['steering-compass', 'heading-sensor']);

/** The curve beside its table, narrow enough for every paper. */
const curveMm = 150;

const headings = Array.from({ length: 360 / cardStepDeg }, (_, at) => at * cardStepDeg);

type Swing = Plan['atSea']['swings'][number];

/** What the compass reads on a heading, and its deviation in words: "002", "2.1° W". */
const readCells = (swing: Swing | undefined, heading: number): [string | undefined, string | undefined] => {
  const deviation = swing?.card[heading / cardStepDeg];
  if (deviation === undefined) return [undefined, undefined];
  const reads = (Math.round(heading - deviation) + 360) % 360;
  const size = Math.abs(deviation).toFixed(1);
  const side = Number(size) === 0 ? '' : deviation > 0 ? ' E' : ' W';
  return [String(reads).padStart(3, '0'), `${size}${side}`];
};

/** The last swing of a compass in one state of its electronics, where a curve could be drawn through it. */
const lastSwing = (swings: readonly Swing[], kit: string, electronics: Swing['electronics']): Swing | undefined =>
  swings
    .filter((swing) => swing.kit === kit && swing.electronics === electronics && swing.card.length > 0)
    .toSorted((a, b) => byCodeUnit(b.on, a.on))[0];

const cardTable = (id: string, title: string, swing?: Swing): ListTable => ({
  id,
  title,
  columns: [
    { id: 'heading', head: 'magnetic °', kind: 'figure' },
    { id: 'reads', head: 'compass reads °', kind: 'blank' },
    { id: 'deviation', head: 'deviation ° E or W', kind: 'blank' },
    { id: 'other', head: 'magnetic °', kind: 'figure' },
    { id: 'other-reads', head: 'compass reads °', kind: 'blank' },
    { id: 'other-deviation', head: 'deviation ° E or W', kind: 'blank' },
  ],
  rows: headings
    .slice(0, headings.length / 2)
    .map((heading) => [heading, ...readCells(swing, heading), heading + 180, ...readCells(swing, heading + 180)]),
  empty: '',
});

const swungWords = ({ on, curve }: Swing): string =>
  `Swung ${on}; at most ${(curve?.mostDeg ?? 0).toFixed(1)}°, and the curve leaves ${(curve?.residualDeg ?? 0).toFixed(1)}° of what was read.`;

const swungBlocks = (name: string, swing: Swing): Block[] => {
  const { points, card, kit, electronics } = swing;
  const title = `${name}, electronics ${electronics}: deviation over heading, points as read and the curve through them`;
  return [
    { kind: 'words', text: swungWords(swing) },
    {
      kind: 'drawing',
      drawing: deviationDrawing({ title, points, card, widthMm: curveMm }),
      about: [kit],
      isUpright: true,
    },
  ];
};

const cardBlocks = (id: string, name: string, electronics: Swing['electronics'], swing: Swing | undefined): Block[] => [
  {
    kind: 'table',
    isWhole: true,
    table: cardTable(`deviation-${id}-${electronics}`, `${name}, electronics ${electronics}`, swing),
  },
  ...(swing === undefined
    ? [{ kind: 'blanks', blanks: ['Swung on, where, by whom'] } satisfies Block]
    : swungBlocks(name, swing)),
];

/** The cards of one compass: those that were swung filled in, and always one for all electronics on. */
const compassBlocks = ({ id, name }: Boat['kit'][number], swings: readonly Swing[]): Block[] => {
  const off = lastSwing(swings, id, 'off');
  return [
    ...(off === undefined ? [] : cardBlocks(id, name, 'off', off)),
    ...cardBlocks(id, name, 'on', lastSwing(swings, id, 'on')),
  ];
};

/** A card for each compass and each heading sensor that is aboard when the work is done, filled in from its last swing or to fill in. */
export const deviationChapter = (boat: Boat, { atSea }: Pick<Plan, 'atSea'>): Chapter => {
  const { sheetOf } = cardBoat(boat);
  const compasses = boat.kit.filter(({ id, fate }) => fate !== 'goes' && compassKinds.has(sheetOf.get(id)?.kind));
  return {
    id: 'deviation',
    title: 'Deviation cards',
    blocks: [
      {
        kind: 'words',
        text: 'Swing each compass in open water, once with electronics off and once with all on as at sea, iron and phones stowed; keep both cards. Magnetic minus compass is the deviation: E where it is positive. Swing again after any change near a compass.',
      },
      ...(compasses.length === 0
        ? [{ kind: 'words', text: 'No compass and no heading sensor is in the boat file.' } satisfies Block]
        : compasses.flatMap((unit) => compassBlocks(unit, atSea.swings))),
    ],
  };
};
