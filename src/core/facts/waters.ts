import type { SourceKey } from './sources.ts';

/** Where a boat is planned to hold up by how many other ships she hears. */
export const waters = ['quiet', 'coast', 'harbour'] as const;
export type Waters = (typeof waters)[number];

/** What other ships send that one receiver takes in, a second. */
export interface ShipsHeard {
  /** positions of ships that must carry AIS, and of those that need not */
  readonly classAPerS: number;
  readonly classBPerS: number;
  /** names and voyages of the first, and each of the two parts in which the others say theirs */
  readonly classAStaticPerS: number;
  readonly classBStaticPerS: number;
  readonly source: SourceKey;
}

/**
 * Ships heard, by waters. Quiet: one ship under way every 10 s, one small craft every 30 s, both with a name every 6 min.
 * Coast and busy harbour: as recorded once each.
 */
export const shipsHeard: Readonly<Record<Waters, ShipsHeard>> = {
  quiet: {
    classAPerS: 1 / 10,
    classBPerS: 1 / 30,
    classAStaticPerS: 1 / 360,
    classBStaticPerS: 1 / 360,
    source: 'choice-quiet-waters',
  },
  coast: {
    classAPerS: 0.84,
    classBPerS: 0.043,
    classAStaticPerS: 0.074,
    classBStaticPerS: 0.028,
    source: 'recorded-ship-reports',
  },
  harbour: {
    classAPerS: 7.4,
    classBPerS: 1.3,
    classAStaticPerS: 0.23,
    classBStaticPerS: 0.08,
    source: 'recorded-ship-reports',
  },
};

/** The waters a boat is planned for where her file names none: the fullest, as a bus that holds there holds anywhere. */
export const usualWaters: Waters = 'harbour';

const partOfPgn: ReadonlyMap<number, keyof Omit<ShipsHeard, 'source'>> = new Map([
  [129_038, 'classAPerS'],
  [129_039, 'classBPerS'],
  [129_794, 'classAStaticPerS'],
  [129_809, 'classBStaticPerS'],
  [129_810, 'classBStaticPerS'],
]);

/** How often a receiver puts a message of other ships on the bus, a second; undefined for what is no such message. */
export const shipMessagesPerS = (pgn: number, ships: ShipsHeard): number | undefined => {
  const part = partOfPgn.get(pgn);
  return part === undefined ? undefined : ships[part];
};

/** Whether a message tells of other ships, and so comes as they bring it. */
export const isOfShips = (pgn: number): boolean => partOfPgn.has(pgn);

/**
 * VDM sentences a second: one a position, two for a name and voyage, one for each part of a small craft's name.
 * Source: recorded-ship-reports.
 */
export const shipSentencesPerS = (ships: ShipsHeard): number =>
  ships.classAPerS + ships.classBPerS + 2 * ships.classAStaticPerS + 2 * ships.classBStaticPerS;
