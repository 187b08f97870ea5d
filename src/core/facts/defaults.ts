import type { Figure } from './figure.ts';
import type { SourceKey } from './sources.ts';

interface LengthDoubt {
  readonly lessPct: number;
  readonly morePct: number;
  readonly plusM: number;
  readonly atLeastM: number;
  readonly source: SourceKey;
}

/** Doubt of a length where the person entered none, by how it is known. */
export const lengthDoubt = {
  taped: { lessPct: 3, morePct: 3, plusM: 0.1, atLeastM: 0, source: 'practice-length-doubt' },
  papers: { lessPct: 10, morePct: 10, plusM: 0, atLeastM: 0, source: 'practice-length-doubt' },
  guessed: { lessPct: 10, morePct: 30, plusM: 0, atLeastM: 0.5, source: 'practice-length-doubt' },
} as const satisfies Record<'taped' | 'papers' | 'guessed', LengthDoubt>;

/** Cable between a place and the plug of a unit there, where the person entered no tail. */
export const defaultTail = {
  anyUnit: { value: 0.3, unit: 'm', source: 'practice-tails' },
  /** a unit set into a panel must come forward and be unplugged */
  flushUnit: { value: 0.7, unit: 'm', source: 'practice-tails' },
  dc: { value: 0.5, unit: 'm', source: 'practice-tails' },
  nmea0183: { value: 0.5, unit: 'm', source: 'practice-tails' },
} as const satisfies Record<string, Figure>;

/** Lengths in which ready-made drop cables are sold, metres, shortest first. */
export const dropPieces = { valuesM: [0.5, 1, 2, 5], source: 'practice-drop-pieces' } as const satisfies {
  readonly valuesM: readonly number[];
  readonly source: SourceKey;
};

/** Lengths in which ready-made trunk cables are sold, metres, shortest first. */
export const trunkPieces = { valuesM: [0.5, 1, 2, 5, 10], source: 'practice-trunk-pieces' } as const satisfies {
  readonly valuesM: readonly number[];
  readonly source: SourceKey;
};

/** What a supply counts as where nobody has said more. */
export const supplyDefaults = {
  /** lowest volts of a bank for each volt it is called by: 11.5 V of a 12 V bank */
  lowestShare: { value: 11.5 / 12, unit: 'V for each V of its name', source: 'practice-lowest-bank' },
  nominalV: { value: 12, unit: 'V', source: 'choice-unknown-supply' },
  /** lost in a panel's feeder of unknown length, size or load */
  feederDropPct: { value: 3, unit: '%', source: 'choice-unknown-supply' },
} as const satisfies Record<string, Figure>;
