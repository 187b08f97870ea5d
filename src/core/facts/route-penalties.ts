import type { LineKind, Place } from '../boat/boat-schema.ts';
import type { Figure } from './figure.ts';

const perMetre = (value: number): Figure => ({ value, unit: 'm of detour for each metre', source: 'choice-detours' });

/** How many metres longer a route may be, for each metre it is kept out of such air. */
export const exposurePenalty: Readonly<Record<Place['exposure'], Figure>> = {
  dry: perMetre(0),
  damp: perMetre(0.2),
  spray: perMetre(0.5),
  weather: perMetre(1),
  engine: perMetre(2),
  bilge: perMetre(2),
};

interface Neighbour {
  /** lines that suffer from it, or that it suffers from */
  readonly kinds: readonly LineKind[];
  readonly perM: Figure;
}

const dataKinds: readonly LineKind[] = [
  'ethernet',
  'pair',
  'single-wire',
  'analog',
  'engine-can',
  'modbus',
  'video',
  'audio',
  'usb',
];

/** What a line is kept away from, by the names of `near` of a way; data suffers from currents and radio, a compass from feeds. */
export const nearPenalty: ReadonlyMap<string, Neighbour> = new Map<string, Neighbour>([
  ['mains', { kinds: [...dataKinds, 'coax', 'feed', 'feeder'], perM: perMetre(2) }],
  ['hf-coax', { kinds: [...dataKinds, 'coax'], perM: perMetre(3) }],
  ['starter-cable', { kinds: [...dataKinds, 'coax'], perM: perMetre(1) }],
  ['steering-compass', { kinds: ['feed', 'feeder', 'audio'], perM: perMetre(2) }],
]);

/** A tight or fire-proof bulkhead wants a rated transit for each cable. */
export const transitPenalty = {
  value: 2,
  unit: 'm of detour',
  source: 'choice-rated-transit',
} as const satisfies Figure;

/** A pipe above its fill costs the hours of a hard pull, shared by all that is drawn through it. */
export const hardPull = { value: 2.25, unit: 'h', source: 'practice-labour' } as const satisfies Figure;
