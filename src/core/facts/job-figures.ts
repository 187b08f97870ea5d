import type { Figure } from './figure.ts';
import type { JobKind } from './job-kinds.ts';
import type { SourceKey } from './sources.ts';

/** How long something only waits. */
export const jobWaits = {
  /** a gland or a bedded foot, before rain or a plug */
  glandCure: { value: 24, unit: 'h', source: 'memory-cure-times' },
  /** a fitting below the waterline, before it meets the water */
  hullCure: { value: 48, unit: 'h', source: 'memory-cure-times' },
  /** afloat, before a new fitting below the waterline is trusted */
  watchForWater: { value: 24, unit: 'h', source: 'practice-watch-for-water' },
} as const satisfies Record<string, Figure>;

/** The most that an essential function may be dark at a stretch while it counts. */
export const darkMost = { value: 3, unit: 'days', source: 'choice-dark-limit' } as const satisfies Figure;

interface OutsideHours {
  readonly leastH: number;
  readonly mostH: number;
}

/** Hours of jobs that no quote counts: those of the yard, of offices, and of keeping the pumps alive meanwhile. */
export const outsideHours = {
  source: 'choice-job-hours',
  byKind: {
    paper: { leastH: 0.5, mostH: 1 },
    'temporary-feed': { leastH: 0.5, mostH: 1 },
    'take-temporary-feed-out': { leastH: 0.5, mostH: 0.5 },
    'haul-out': { leastH: 1.5, mostH: 3 },
    launch: { leastH: 1.5, mostH: 3 },
    'mast-down': { leastH: 3, mostH: 6 },
    'mast-up': { leastH: 3, mostH: 6 },
    'watch-for-water': { leastH: 0.5, mostH: 0.5 },
  } satisfies Partial<Record<JobKind, OutsideHours>>,
} as const satisfies { source: SourceKey; byKind: Partial<Record<JobKind, OutsideHours>> };

/** Kinds of job whose hours are in no quote. */
export const isOutsideQuote = (kind: JobKind): kind is keyof typeof outsideHours.byKind | 'own' =>
  kind === 'own' || Object.hasOwn(outsideHours.byKind, kind);
