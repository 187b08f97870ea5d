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
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof sources;
