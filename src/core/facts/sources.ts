/**
 * The ledger of sources. Every figure in core/facts names one of these keys; docs/sources.md is printed from it.
 * `standing` says how far the figure can be trusted, and is shown with it.
 */
export type Standing = 'published' | 'computed' | 'common practice' | 'from memory' | 'project choice';

export interface Source {
  readonly standing: Standing;
  readonly text: string;
}

export const sources = {
  'practice-length-doubt': {
    standing: 'common practice',
    text: 'Doubt of a length by the way it is known; nothing printed was found. Every one is a setting.',
  },
  'pgn-database': {
    standing: 'published',
    text: 'CANboat PGN database 6.2.0, (C) 2009-2025 Kees Verruijt, Apache-2.0; priorities it lacks from its extract of NMEA 2000 Appendix B.1 version 1.300 (May 2009).',
  },
  'pgn-typical-length': {
    standing: 'project choice',
    text: 'Typical length of a message of variable length, where the CANboat PGN database 6.2.0 states only the least.',
  },
  'pgn-maker-range': {
    standing: 'published',
    text: 'Ranges kept for makers, CANboat PGN database 6.2.0. A length of 20 bytes for their fast packets is a project choice.',
  },
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof sources;
