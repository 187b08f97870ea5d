import { headingClearances } from './compass-figures.ts';
import type { Figure } from './figure.ts';

type Row = (typeof headingClearances.rows)[number]['from'];

/** What stands near a heading sensor, by how it turns one. */
export const headingNeighbours = {
  engine: 'main engine',
  radar: 'radar magnetron',
  motor: 'pump and fridge motors',
  'radio-antenna': 'HF or VHF antenna',
  'high-current': 'high-current d.c. wires',
  loudspeaker: 'meters, loudspeakers',
  compass: 'steering compass',
  radio: 'radios, radars, sounders, engine gauges',
  steel: 'steel plates, tanks',
} as const satisfies Record<string, Row>;
export type HeadingNeighbour = keyof typeof headingNeighbours;

/** How far a heading sensor keeps from a neighbour, m. */
export const headingClearanceM = (neighbour: HeadingNeighbour): number =>
  headingClearances.rows.find(({ from }) => from === headingNeighbours[neighbour])?.leastM ?? 0;

const kindRows: readonly (readonly [neighbour: HeadingNeighbour, kinds: string])[] = [
  ['engine', 'engine gearbox generator alternator outboard'],
  ['radar', 'radar'],
  ['motor', 'steering-drive windlass thruster pump fridge watermaker climate actuator winch trim-tabs'],
  ['radio-antenna', 'radio-antenna antenna-tuner'],
  ['high-current', 'charger inverter dc-converter'],
  ['loudspeaker', 'loudspeaker hailer'],
  ['compass', 'steering-compass'],
  ['radio', 'vhf-radio mfhf-radio ais sounder satellite-terminal cellular-hub weather-receiver'],
];

/** What a kind of unit is to a heading sensor near it; other kinds keep the distance their sheet gives (choice-heading-siting). */
export const headingNeighbourOf: ReadonlyMap<string, HeadingNeighbour> = new Map(
  kindRows.flatMap(([neighbour, kinds]) =>
    kinds.split(' ').map((kind): [string, HeadingNeighbour] => [kind, neighbour]),
  ),
);

/** How a place for a heading sensor is judged. */
export const headingSiting = {
  /** within so many times its clearance a neighbour leaves a doubt: places are known to a hand’s breadth or two */
  doubtWithin: { value: 1.25, unit: 'x clearance', source: 'choice-heading-siting' },
  /** two things in one place can keep so far apart */
  withinPlace: { value: 0.5, unit: 'm', source: 'choice-heading-siting' },
  /** from this steady current on, a feed counts as a high-current wire */
  highCurrent: { value: 20, unit: 'A', source: 'choice-heading-siting' },
  /** an automatic compensation reaches so far */
  compensation: { value: 30, unit: '°', source: 'practice-heading-siting' },
  /** sliding it by this much each way is the test of a place */
  probe: { value: 0.3, unit: 'm', source: 'practice-heading-siting' },
  probeGood: { value: 5, unit: '°', source: 'practice-heading-siting' },
  probeMove: { value: 10, unit: '°', source: 'practice-heading-siting' },
} as const satisfies Record<string, Figure>;
