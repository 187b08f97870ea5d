import type { SourceKey } from './sources.ts';

interface HullMeasures {
  /** length of a usual one, m */
  readonly lengthM: number;
  /** beam = this x L^(2/3), both in m */
  readonly beamFactor: number;
  /** draft and air draft as shares of the length */
  readonly draftShare: number;
  readonly airDraftShare: number;
  /** Ah of the house bank for each metre of length, and of the start bank */
  readonly houseAhPerM: number;
  readonly startAh: number;
  readonly source: SourceKey;
}

const source = 'practice-hull-measures' satisfies SourceKey;

/** What boats of a kind usually measure and carry, by hull pattern: a guess from the length until somebody says better. */
export const hullMeasures = {
  'sloop-deck-stepped': {
    lengthM: 9.5,
    beamFactor: 0.7,
    draftShare: 0.17,
    airDraftShare: 1.45,
    houseAhPerM: 18,
    startAh: 70,
    source,
  },
  'sloop-keel-stepped': {
    lengthM: 11,
    beamFactor: 0.7,
    draftShare: 0.175,
    airDraftShare: 1.5,
    houseAhPerM: 22,
    startAh: 80,
    source,
  },
  ketch: {
    lengthM: 12.5,
    beamFactor: 0.7,
    draftShare: 0.15,
    airDraftShare: 1.3,
    houseAhPerM: 28,
    startAh: 90,
    source,
  },
  catamaran: {
    lengthM: 12,
    beamFactor: 1.28,
    draftShare: 0.1,
    airDraftShare: 1.5,
    houseAhPerM: 36,
    startAh: 80,
    source,
  },
  'pilothouse-motorboat': {
    lengthM: 11.5,
    beamFactor: 0.75,
    draftShare: 0.1,
    airDraftShare: 0.56,
    houseAhPerM: 19,
    startAh: 180,
    source,
  },
  trawler: {
    lengthM: 12.5,
    beamFactor: 0.78,
    draftShare: 0.11,
    airDraftShare: 0.58,
    houseAhPerM: 30,
    startAh: 150,
    source,
  },
  'sport-cruiser': {
    lengthM: 9,
    beamFactor: 0.72,
    draftShare: 0.1,
    airDraftShare: 0.4,
    houseAhPerM: 14,
    startAh: 90,
    source,
  },
  'open-boat': {
    lengthM: 6,
    beamFactor: 0.7,
    draftShare: 0.08,
    airDraftShare: 0.4,
    houseAhPerM: 13,
    startAh: 75,
    source,
  },
  'rigid-inflatable': {
    lengthM: 7,
    beamFactor: 0.73,
    draftShare: 0.09,
    airDraftShare: 0.38,
    houseAhPerM: 13,
    startAh: 75,
    source,
  },
  'river-cruiser': {
    lengthM: 11,
    beamFactor: 0.75,
    draftShare: 0.085,
    airDraftShare: 0.32,
    houseAhPerM: 36,
    startAh: 120,
    source,
  },
  'steel-workboat': {
    lengthM: 15,
    beamFactor: 0.82,
    draftShare: 0.12,
    airDraftShare: 0.6,
    houseAhPerM: 14,
    startAh: 180,
    source,
  },
} as const satisfies Record<string, HullMeasures>;

/** Hull patterns by id. */
export type HullMeasuresId = keyof typeof hullMeasures;

/** How much longer a way is than the straight line between its ends, before anybody has taped it. */
export const guessedWay = {
  source: 'practice-guessed-ways',
  /** along lockers, linings and frames */
  throughBoat: { times: 1.3 },
  /** up a mast or a leg of an arch */
  upMast: { times: 1.05 },
  /** what it may be longer still, % of it, and at least so much */
  morePct: 30,
  moreAtLeastM: 0.3,
} as const satisfies { readonly source: SourceKey } & Record<string, unknown>;

/** Circuits of a small boat's panel as they usually stand there, of the electronics, of the radio and of the rest of the boat. */
export const usualCircuits = {
  source: 'practice-hull-measures',
  rows: [
    { id: 'nav-bus', name: 'navigation bus', ratingA: 3, kind: 'breaker', side: 'electronics' },
    { id: 'screens', name: 'screens', ratingA: 10, kind: 'breaker', side: 'electronics' },
    { id: 'radio', name: 'radio', ratingA: 10, kind: 'breaker', side: 'radio' },
    { id: 'instruments', name: 'instruments', ratingA: 5, kind: 'fuse', side: 'electronics' },
    { id: 'pilot', name: 'pilot', ratingA: 20, kind: 'slow-breaker', side: 'boat' },
    { id: 'lights', name: 'navigation lights', ratingA: 10, kind: 'breaker', side: 'boat' },
    { id: 'bilge-pump', name: 'bilge pump', ratingA: 10, kind: 'live-fuse', side: 'boat' },
    { id: 'spare', name: 'spare', ratingA: 5, kind: 'fuse', side: 'electronics' },
  ],
} as const;

/** On a boat of 24 V: the converters behind which the electronics hang, one for the radio alone, each with its circuit. */
export const usualConverters = {
  source: 'practice-hull-measures',
  rows: [
    { id: 'converter', name: 'converter to 12 V', panel: 'electronics-panel', ratedA: 20, side: 'electronics' },
    { id: 'radio-converter', name: 'converter of the radio', panel: 'radio-panel', ratedA: 10, side: 'radio' },
  ],
  circuit: { ratingA: 20, kind: 'breaker' },
  plate: { outV: 13.8, efficiencyPct: 88, isolated: true },
} as const;
