import { type BoatIndex, indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat, Cable } from '../../core/boat/boat-schema.ts';
import { lengthMm } from '../../core/boat/measure.ts';
import type { LineEntry, Plan } from '../../core/plan-shape.ts';
import { passageWords } from '../../core/rules/plugs/passage-words.ts';
import { byCodeUnit } from '../../core/units/by-code-unit.ts';
import type { ListCell, ListTable } from '../table/list-table.ts';
import { conductorWords } from './conductor-words.ts';
import { endWords } from './end-words.ts';
import { labelOf } from './label-of.ts';
import { printCount } from './print-figure.ts';
import { wiresWords } from './wire-words.ts';

const columns: ListTable['columns'] = [
  { id: 'label', head: 'label', kind: 'label', share: 0.6 },
  { id: 'kind', head: 'kind', share: 0.8 },
  { id: 'from', head: 'from', share: 1.8 },
  { id: 'to', head: 'to', share: 1.8 },
  { id: 'conductors', head: 'conductors', share: 1.8 },
  { id: 'route', head: 'route', share: 2.4 },
  { id: 'length', head: 'length', unit: 'm', kind: 'figure', digits: 2, share: 0.8 },
  { id: 'longest', head: 'longest', unit: 'm', kind: 'figure', digits: 2, share: 0.8 },
  { id: 'bought', head: 'bought', unit: 'm', kind: 'figure', digits: 2, share: 0.8 },
  { id: 'length-is', head: 'length is', printed: false },
  { id: 'fuse', head: 'fuse', unit: 'A', kind: 'figure', share: 0.6 },
  { id: 'cable', head: 'cable', share: 1.1 },
  { id: 'wires', head: 'wires', printed: false },
  { id: 'drip-loops', head: 'drip loops at', printed: false },
  { id: 'plugs', head: 'where its plug does not pass', printed: false },
  { id: 'line', head: 'line id', kind: 'label', printed: false },
];

const routeWords = (index: BoatIndex, places: readonly string[]): string =>
  places.map((place) => index.places.get(place)?.name ?? place).join(' > ');

const pinWords = { fixed: 'new, fixed by you', bought: 'bought', fitted: 'fitted' } as const;

const newWords = ({ pinned }: LineEntry): string => (pinned === undefined ? 'new' : pinWords[pinned]);

/** What is done where the plug of a line does not pass, and what else could be, each with its price. */
const plugWords = (index: BoatIndex, line: LineEntry, passages: Plan['passages']): string =>
  passages
    .filter((passage) => passage.line === line.id)
    .map((passage) => {
      const [a = '', b = ''] = index.ways.get(passage.way)?.ends ?? [];
      return `${routeWords(index, [a, b])}: ${passageWords(index, passage) || 'nothing can be done'}`;
    })
    .join(' + ');

/** All cable bought for a line; nothing where none is. */
const boughtM = ({ pieces }: LineEntry): number | undefined => pieces?.reduce((sum, { lengthM }) => sum + lengthM, 0);

const lineRow = (index: BoatIndex, plan: Plan, line: LineEntry): ListCell[] => [
  labelOf(line),
  line.kind,
  endWords(index, line.from),
  endWords(index, line.to),
  conductorWords(plan, line),
  routeWords(index, line.places),
  line.lengthM,
  line.longestM,
  boughtM(line),
  line.guessed ? 'partly guessed' : 'known',
  plan.feeds.find((feed) => feed.line === line.id)?.fuseA,
  line.kept === undefined ? newWords(line) : `aboard: ${line.kept.join(' + ')}`,
  wiresWords(index, line),
  (line.dripLoops ?? []).map((place) => index.places.get(place)?.name ?? place).join(' + '),
  plugWords(index, line, plan.passages),
  line.id,
];

/** The places a cable passes, read off its ways from its first end on. */
const placesOfCable = (index: BoatIndex, cable: Cable): string[] => {
  const places = [cable.from.place];
  for (const id of cable.ways) {
    const ends = index.ways.get(id)?.ends;
    if (ends !== undefined) places.push(ends[0] === places.at(-1) ? ends[1] : ends[0]);
  }
  return places;
};

const cableEnd = (index: BoatIndex, end: Cable['from']): string =>
  end.at === undefined ? (index.places.get(end.place)?.name ?? end.place) : endWords(index, end.at);

/** A cable aboard that no line of the plan uses: it leaves, or it stays with other work. */
const cableRow = (index: BoatIndex, cable: Cable): ListCell[] => {
  const { nominalMm, longestMm } = lengthMm(cable.length);
  return [
    undefined,
    cable.kind,
    cableEnd(index, cable.from),
    cableEnd(index, cable.to),
    cable.conductors === undefined ? undefined : printCount(cable.conductors, 'conductor'),
    routeWords(index, placesOfCable(index, cable)),
    nominalMm / 1000,
    longestMm / 1000,
    undefined,
    cable.length.how === 'guessed' ? 'partly guessed' : 'known',
    undefined,
    `${cable.fate === 'goes' ? 'leaves' : 'stays'}: ${cable.id}`,
    ...columns.slice(12).map(() => undefined),
  ];
};

/**
 * The cable schedule: every line of the plan, then every cable aboard that no line uses. Ends and route in words, conductors
 * with their colours, the length as entered, the longest it can be with every doubt against it, and what is bought for it.
 */
export const cableSchedule = (boat: Boat, plan: Plan): ListTable => {
  const index = indexBoat(boat);
  const used = new Set(plan.lines.flatMap((line) => line.kept ?? []));
  const unused = boat.cables.filter((cable) => !used.has(cable.id)).sort((a, b) => byCodeUnit(a.id, b.id));
  return {
    id: 'cables',
    title: 'Cable schedule',
    says: 'Every cable, new and kept, then those that leave. The longest is what it is bought for.',
    columns,
    rows: [...plan.lines.map((line) => lineRow(index, plan, line)), ...unused.map((cable) => cableRow(index, cable))],
    empty: 'No line is planned yet.',
  };
};
