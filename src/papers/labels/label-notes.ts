import { indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { Block, Chapter } from '../binder/binder-shape.ts';
import { printCount } from '../lists/print-figure.ts';
import type { ListTable } from '../table/list-table.ts';
import type { CableLabel } from './cable-labels.ts';
import { geometryWords, type LabelSheet, type LabelTape, labelSheets, labelTapes } from './label-geometry.ts';
import { type LabelPages, labelPages } from './label-pages.ts';
import { fromEndWords } from './spot-words.ts';

type Geometry = LabelSheet | LabelTape;

/** Ids said in a row, each once: "C03, C07 and 4 more". */
const idWords = (ids: readonly string[]): string => {
  const own = [...new Set(ids)];
  const told = own.slice(0, 12);
  const rest = own.length - told.length;
  return rest === 0 ? told.join(', ') : `${told.join(', ')} and ${rest} more`;
};

const mm = (value: number): string => `${Math.ceil(value)} mm`;

/** The geometries of the same kind, for the same paper. */
const alike = (geometry: Geometry): readonly Geometry[] =>
  'rows' in geometry ? labelSheets.filter(({ paper }) => paper === geometry.paper) : labelTapes;

/** The next larger geometry in which all these labels say all they have to. */
const largerFor = (labels: readonly CableLabel[], geometry: Geometry): Geometry | undefined => {
  const areaOf = (one: Geometry): number => ('rows' in one ? one.widthMm * one.heightMm : one.widthMm);
  return alike(geometry)
    .filter((one) => areaOf(one) > areaOf(geometry))
    .toSorted((one, other) => areaOf(one) - areaOf(other))
    .find((one) => labelPages(labels, one, { boat: '' }).placed.every(({ set }) => set.fits && set.saysAll));
};

/**
 * What a person must know of the labels as they came out: which do not go round their cable, which say less than they could or
 * have no code, and which id is not handed out yet.
 */
export const labelFaults = ({ placed }: LabelPages, geometry: Geometry): string[] => {
  const where = geometryWords(geometry);
  const tight = placed.filter(({ set }) => !(set.fits && set.saysAll)).map(({ label }) => label);
  const larger = tight.length === 0 ? undefined : largerFor(tight, geometry);
  const short = placed.filter(({ label, roundMm }) => roundMm < label.wrapMm).map(({ label }) => label);
  const bare = placed.filter(({ set }) => !set.hasCode).map(({ label }) => label);
  const open = placed.filter(({ label }) => !label.isGiven).map(({ label }) => label.id);
  const longest = Math.max(...short.map(({ wrapMm }) => wrapMm));
  return [
    ...(open.length === 0
      ? []
      : [`Not handed out yet: ${idWords(open)}. Hand the labels out before these are printed, or the ids may change.`]),
    ...(tight.length === 0
      ? []
      : [
          `Too little room on ${where} for all of ${idWords(tight.map(({ id }) => id))}: ${
            larger === undefined ? 'take a larger one' : `take ${geometryWords(larger)}`
          }.`,
        ]),
    ...(short.length === 0
      ? []
      : [
          `Does not go round ${idWords(short.map(({ id }) => id))}, up to ${mm(longest)} being needed: ` +
            'fold it into a flag, or take tape.',
        ]),
    ...(bare.length === 0
      ? []
      : [
          `${printCount(bare.length, 'label')} without a code: its squares would be too small to be read. The id is all that is needed.`,
        ]),
  ];
};

const partedTable = (boat: Boat, labels: readonly CableLabel[]): ListTable => {
  const index = indexBoat(boat);
  const halves = labels.filter(({ spot }) => spot.at === 'break');
  const ids = [...new Set(halves.map(({ line }) => line))];
  return {
    id: 'parted-cables',
    title: 'Cables parted with the mast',
    columns: [
      { id: 'label', head: 'label', kind: 'label', share: 0.6 },
      { id: 'place', head: 'parted at', share: 1.4 },
      { id: 'boat', head: 'boat side', share: 2 },
      { id: 'mast', head: 'mast side', share: 2 },
      { id: 'parted', head: 'parted', kind: 'tick', share: 0.5 },
      { id: 'joined', head: 'joined', kind: 'tick', share: 0.5 },
    ],
    rows: ids.map((line) => {
      const own = halves.filter((label) => label.line === line);
      const place = own.flatMap(({ spot }) => (spot.at === 'break' ? [spot.place] : []))[0] ?? '';
      const farOf = (half: string): string | undefined =>
        own.find(({ spot }) => spot.at === 'break' && spot.half === half)?.far[0];
      return [own[0]?.id, index.places.get(place)?.name ?? place, farOf('boat'), farOf('mast'), undefined, undefined];
    }),
    empty: 'No cable is parted with a mast.',
  };
};

const unstepping = (boat: Boat, labels: readonly CableLabel[]): Block[] => {
  const table = partedTable(boat, labels);
  if (table.rows.length === 0) return [];
  return [
    { kind: 'heading', text: 'When the mast comes down' },
    {
      kind: 'caution',
      hazard: 'Live circuits and rigging',
      text: 'Switch off every circuit that goes up the mast, and radar and radio at their own fuses, before a joint is opened. Part the cables before the rigging is slackened.',
      deferTo: 'whoever unsteps the mast',
    },
    {
      kind: 'points',
      points: [
        'See that both halves of each cable carry its label, one “mast side”, one “boat side”. Photograph the joints.',
        'Part each joint. Undo the strain relief of the mast’s half; leave that of the boat’s half.',
        'Cap every end against water. Coil the mast’s halves up to the foot and tie them there, so that none is under the mast when it is lowered.',
        'Stepping it again: draw the mast’s halves in, join ends of the same id, mast side to boat side, then hang the drip loops.',
        'Try every unit of the mast before the crane leaves.',
      ],
    },
    { kind: 'table', table },
  ];
};

const onPaper = ({ printMm }: LabelSheet): string[] => [
  printMm === undefined
    ? 'A label of paper lasts under clear sleeve only; one of film lasts where it is dry.'
    : 'The white part goes on the cable first, the clear part round over it: the print then lies under film.',
  'Print with a laser, or with pigment ink: other ink runs. In weather, engine space and bilge take labels that laminate themselves, or clear sleeve.',
  'Print at 100 %, never “fit to page”. Lay a ruler on the one at the head of this page, printed the same way, before a sheet of labels goes in.',
];

const onTape = [
  'Print at 100 %. A strip is one cable: all its labels, cut apart at the marks.',
  'Take laminated tape of a kind that bends round a cable; stiff tape lifts at its end.',
];

/** What is read before labels are printed and put on, on paper of its own so that no label is spent on it. */
export const labelNotes = ({
  boat,
  plan,
  labels,
  pages,
  geometry,
}: {
  boat: Boat;
  plan: Plan;
  labels: readonly CableLabel[];
  pages: LabelPages;
  geometry: Geometry;
}): Chapter => {
  const faults = labelFaults(pages, geometry);
  const counted = `${printCount(pages.placed.length, 'label')} for ${printCount(plan.lines.length, 'cable')}`;
  return {
    id: 'labels',
    title: 'Cable labels: read first',
    isIndexed: false,
    blocks: [
      { kind: 'words', text: `${counted}, ${geometryWords(geometry)}. Print this page on plain paper first.` },
      { kind: 'points', points: 'rows' in geometry ? onPaper(geometry) : onTape },
      { kind: 'heading', text: 'Where they go' },
      {
        kind: 'points',
        points: [
          `One at each end, ${fromEndWords} from it; one on each side of a bulkhead or deck; one on each half where the cables of a mast are parted.`,
          'The id is that of the cable for life, the same on all its labels. A cable that is replaced by another gets a new one.',
          'Each names the end beyond it, at a joint the end its half goes to. Turn it so that it is read from where one stands.',
        ],
      },
      ...(faults.length === 0
        ? []
        : ([
            { kind: 'heading', text: 'How these came out' },
            { kind: 'points', points: faults },
          ] satisfies Block[])),
      ...unstepping(boat, labels),
    ],
  };
};
