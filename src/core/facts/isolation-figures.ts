import type { SourceKey } from './sources.ts';

/** Kinds of unit whose metal usually meets the metal they stand on: on a metal hull somebody must have looked. */
export const metalKinds: ReadonlySet<string> = new Set([
  'antenna-tuner',
  'depth-sensor',
  'engine',
  'gearbox',
  'hailer',
  'loudspeaker',
  'position-antenna',
  'radar',
  'radio-antenna',
  'satellite-terminal',
  'speed-sensor',
  'tank-sender',
  'transducer',
  'weather-sensor',
  'wind-sensor',
]);

/** Kinds of unit that stand in the water through the hull. */
export const throughHullKinds: ReadonlySet<string> = new Set(['depth-sensor', 'speed-sensor', 'transducer']);

interface Cut {
  /** what parts a joint of this kind, after “at …” */
  readonly says: string;
  /** hundredths of a euro; absent where it is a matter of work or of the unit */
  readonly cost?: number;
}

/** What parts a joint of each kind, cheapest means first; a joint inside a unit is parted by no one but its maker. */
export const isolationCuts = {
  source: 'choice-isolation-parts',
  mount: { says: 'stand it on an insulating pad, with insulating sleeves round its bolts', cost: 1500 },
  throughHull: { says: 'fit an insulating sleeve, or a housing of plastic', cost: 6000 },
  engineFeet: { says: 'insulate its feet and put a flexible coupling with insulated bolts in the shaft', cost: 40_000 },
  poles: { says: 'fit starter, alternator and senders with isolated poles', cost: 90_000 },
  signal: { says: 'put an isolator in the line, or lead the sender’s return on a wire of its own', cost: 8000 },
  shield: { says: 'take the shield off its socket there, or put an unshielded coupler in the cable', cost: 500 },
  earth: { says: 'lift the earth of the shield there and insulate its end', cost: 0 },
  braid: { says: 'put an isolator in the coax; none that stops the current of an active antenna', cost: 5000 },
} as const satisfies Record<string, Cut | SourceKey>;
