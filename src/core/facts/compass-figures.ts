import type { Figure } from './figure.ts';
import type { SourceKey } from './sources.ts';

interface SafeDistance {
  readonly item: string;
  /** kinds of unit it stands in for */
  readonly kinds?: readonly string[];
  readonly standardM?: number;
  readonly steeringM?: number;
  readonly rangeM?: readonly [number, number];
  readonly source: SourceKey;
}

/** Distance of kinds of unit from a compass, m, until the unit's plate is read. */
export const compassSafeDistances: readonly SafeDistance[] = [
  { item: 'pulse radar scanner 2 kW', standardM: 0.7, steeringM: 0.5, source: 'maker-compass-distance' },
  { item: 'pulse radar scanner 4 kW', standardM: 2, steeringM: 1.5, source: 'maker-compass-distance' },
  { item: 'pulse radar scanner 6 kW', standardM: 2.3, steeringM: 1.75, source: 'maker-compass-distance' },
  { item: 'pulse radar scanner 10-25 kW', standardM: 2.4, steeringM: 1.8, source: 'maker-compass-distance' },
  { item: 'magnetron scanner, other print', kinds: ['radar'], standardM: 3, source: 'maker-compass-distance' },
  { item: 'solid-state open array', standardM: 1, source: 'maker-compass-distance' },
  { item: 'AIS unit', kinds: ['ais'], standardM: 0.3, source: 'maker-compass-distance' },
  {
    item: 'small black box',
    kinds: ['converter', 'gateway', 'multiplexer', 'network-switch', 'tank-adapter'],
    standardM: 0.08,
    steeringM: 0.06,
    source: 'maker-compass-distance',
  },
  {
    item: 'pilot heading sensor to steering compass',
    kinds: ['heading-sensor'],
    steeringM: 0.76,
    source: 'maker-compass-distance',
  },
  { item: 'fixed VHF set', kinds: ['vhf-radio'], rangeM: [0.5, 0.8], source: 'practice-compass-distance' },
  { item: 'handset with speaker', kinds: ['vhf-handset'], standardM: 1, source: 'practice-compass-distance' },
  { item: 'loudspeaker', kinds: ['loudspeaker', 'hailer'], rangeM: [1, 2], source: 'practice-compass-distance' },
  { item: '9-12 in display', kinds: ['display'], rangeM: [0.3, 0.7], source: 'practice-compass-distance' },
  { item: 'wiper motor', standardM: 1, source: 'practice-compass-distance' },
];

/** Deviation a unit may cause, degrees x microtesla of the horizontal field: 18 / H on a steering compass. */
export const compassLimits = {
  standard: { value: 5.4, unit: '° µT', source: 'iso-25862' },
  steering: { value: 18, unit: '° µT', source: 'iso-25862' },
  unknownItem: { value: 5, unit: 'm', source: 'iso-25862' },
  unknownItemWarnBelow: { value: 1, unit: 'm', source: 'choice-siting' },
  /** horizontal field where no cruising area is given */
  field: { value: 15, unit: 'µT', source: 'choice-siting' },
} as const satisfies Record<string, Figure>;

/** What an owner may set otherwise: the horizontal field where the boat sails, a key of `limits` in a boat file. */
export const compassOwnLimits = { 'compass-field': compassLimits.field } as const satisfies Record<string, Figure>;

/** How wires lie near a compass where nobody measured it. */
export const compassLaying = {
  /** a two-core cable up to this copper is thin */
  thinUpTo: { value: 2.5, unit: 'mm²', source: 'choice-wires-at-compass' },
  thinSpacing: { value: 0.004, unit: 'm', source: 'choice-wires-at-compass' },
  thickSpacing: { value: 0.02, unit: 'm', source: 'choice-wires-at-compass' },
  /** no wire comes nearer to the card */
  nearest: { value: 0.1, unit: 'm', source: 'choice-wires-at-compass' },
} as const satisfies Record<string, Figure>;

/** Field of a long straight wire, times its distance, for one ampere: μ0 / 2π. */
export const wireFieldConstant = { value: 0.2, unit: 'µT m/A', source: 'physics-wire-field' } as const satisfies Figure;

/** Distances from a compass are rounded up to this. */
export const safeDistanceStep = { value: 0.05, unit: 'm', source: 'iso-25862' } as const satisfies Figure;

/** Distance of a heading sensor from other things, m. */
export const headingClearances = {
  source: 'maker-heading-clearance',
  rows: [
    { from: 'main engine', leastM: 2 },
    { from: 'radar magnetron', leastM: 1.5 },
    { from: 'steel plates, tanks', leastM: 1 },
    { from: 'pump and fridge motors', leastM: 1 },
    { from: 'HF or VHF antenna', leastM: 3 },
    { from: 'high-current d.c. wires', leastM: 1 },
    { from: 'meters, loudspeakers', leastM: 1 },
    { from: 'large bolts', leastM: 0.6 },
    { from: 'steering compass', leastM: 0.76 },
    { from: 'radios, radars, sounders, engine gauges', leastM: 0.9 },
  ],
} as const;

/** Horizontal field of the Earth at some places: latitude alone is a bad guide. */
export const earthFields = {
  source: 'world-magnetic-model',
  rows: [
    { place: 'Singapore', microtesla: 41 },
    { place: 'W Pacific, equator', microtesla: 37.5 },
    { place: 'Canary Islands', microtesla: 31.3 },
    { place: 'Antigua', microtesla: 27.7 },
    { place: 'Panama', microtesla: 27 },
    { place: 'Athens', microtesla: 26.8 },
    { place: 'Mallorca', microtesla: 26.2 },
    { place: 'Miami', microtesla: 25.3 },
    { place: 'Sydney', microtesla: 24.6 },
    { place: 'Auckland', microtesla: 24.5 },
    { place: 'San Francisco', microtesla: 22.9 },
    { place: 'Brest', microtesla: 21.3 },
    { place: 'Newport RI', microtesla: 21 },
    { place: 'Solent', microtesla: 20 },
    { place: 'Ushuaia', microtesla: 19.5 },
    { place: 'Seattle', microtesla: 19.1 },
    { place: 'Kiel', microtesla: 17.8 },
    { place: 'Rio de Janeiro', microtesla: 16.9 },
    { place: 'Stockholm', microtesla: 15.3 },
    { place: 'Shetland', microtesla: 15.2 },
    { place: 'Reykjavik', microtesla: 13.3 },
    { place: 'Tromso', microtesla: 10.8 },
    { place: 'Cape Town', microtesla: 10.7 },
    { place: 'Svalbard', microtesla: 7.2 },
  ],
} as const;
