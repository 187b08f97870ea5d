import type { SourceKey } from './sources.ts';

/** The papers left aboard after a refit, by name. */
export const papersAboard: { readonly source: SourceKey; readonly papers: readonly string[] } = {
  source: 'practice-papers-aboard',
  papers: [
    'power one-line',
    'data drawing with node names',
    'cable list',
    'plan with routes and hidden joints',
    'breaker table',
    'settings sheet',
    'deviation card (both)',
    'test record',
    'photos',
    'manuals and templates',
    'spares',
    'change log',
  ],
};
