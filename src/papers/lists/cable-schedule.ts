import { type BoatIndex, indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat, Cable } from '../../core/boat/boat-schema.ts';
import { lengthMm } from '../../core/boat/measure.ts';
import type { LineEntry, Plan } from '../../core/plan-shape.ts';
import { passageWords } from '../../core/rules/plugs/passage-words.ts';
import { byCodeUnit } from '../../core/units/by-code-unit.ts';
import { csvText } from './csv.ts';
import { endWords } from './end-words.ts';
import { wiresWords } from './wire-words.ts';

const header = [
  'label',
  'kind',
  'from',
  'to',
  'route',
  'length m',
  'longest m',
  'length is',
  'cable',
  'wires',
  'drip loops at',
  'where its plug does not pass',
  'line id',
] as const;

const metres = (lengthM: number): string => lengthM.toFixed(2);

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

const lineRow = (index: BoatIndex, { passages }: Plan, line: LineEntry): string[] => [
  line.label ?? '',
  line.kind,
  endWords(index, line.from),
  endWords(index, line.to),
  routeWords(index, line.places),
  metres(line.lengthM),
  metres(line.longestM),
  line.guessed ? 'partly guessed' : 'known',
  line.kept === undefined ? newWords(line) : `aboard: ${line.kept.join(' + ')}`,
  wiresWords(index, line),
  (line.dripLoops ?? []).map((place) => index.places.get(place)?.name ?? place).join(' + '),
  plugWords(index, line, passages),
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
const cableRow = (index: BoatIndex, cable: Cable): string[] => {
  const { nominalMm, longestMm } = lengthMm(cable.length);
  return [
    '',
    cable.kind,
    cableEnd(index, cable.from),
    cableEnd(index, cable.to),
    routeWords(index, placesOfCable(index, cable)),
    metres(nominalMm / 1000),
    metres(longestMm / 1000),
    cable.length.how === 'guessed' ? 'partly guessed' : 'known',
    `${cable.fate === 'goes' ? 'leaves' : 'stays'}: ${cable.id}`,
    '',
    '',
    '',
    '',
  ];
};

/**
 * The cable schedule as CSV: every line of the plan, then every cable aboard that no line uses. Ends and route in words,
 * the length as entered and the longest it can be with every doubt against it, in metres.
 */
export const cableSchedule = (boat: Boat, plan: Plan): string => {
  const index = indexBoat(boat);
  const used = new Set(plan.lines.flatMap((line) => line.kept ?? []));
  const unused = boat.cables.filter((cable) => !used.has(cable.id)).sort((a, b) => byCodeUnit(a.id, b.id));
  return csvText([
    header,
    ...plan.lines.map((line) => lineRow(index, plan, line)),
    ...unused.map((cable) => cableRow(index, cable)),
  ]);
};
