import type { Figure } from './figure.ts';
import type { SourceKey } from './sources.ts';

/** Limits of steering that an owner may set otherwise; the ids are keys of `limits` in a boat file. */
export const steeringLimits = {
  /** straight from where one steers to what makes the pilot let go */
  'steering-reach': { value: 1, unit: 'm', source: 'choice-steering-reach' },
  /** lost in feed and lead of a drive together at its peak; as it runs, `feed-drop` holds */
  'drive-peak-drop': { value: 10, unit: '% of the nominal voltage', source: 'choice-drive-drop' },
} as const satisfies Record<string, Figure>;

/** What a boat weighs with crew, stores and full tanks, for each kilogram she weighs empty. */
export const ladenShare = {
  value: 1.2,
  unit: 'kg laden for each kg light',
  source: 'memory-laden-share',
} as const satisfies Figure;

/** Peak currents that pilot computers are made for, A, smallest first. */
export const usualOutputs = {
  peaksA: [10, 20, 30, 40],
  source: 'memory-pilot-outputs',
} as const satisfies { readonly peaksA: readonly number[]; readonly source: SourceKey };

/** Kinds of unit that steer: they wake last, when what they steer by is there. */
export const steeringKinds = {
  kinds: ['pilot', 'pilot-computer', 'steering-drive'],
  source: 'practice-helm-page',
} as const satisfies { readonly kinds: readonly string[]; readonly source: SourceKey };

/** What frees the helm from a pilot, and whether it needs a network that may have failed, or only takes the power away. */
export const letGoKinds = {
  'hard-wired-switch': { needsNetwork: false, takesPowerAway: true, source: 'choice-let-go' },
  breaker: { needsNetwork: false, takesPowerAway: true, source: 'choice-let-go' },
  lever: { needsNetwork: false, takesPowerAway: false, source: 'choice-let-go' },
  'pilot-head': { needsNetwork: true, takesPowerAway: false, source: 'choice-let-go' },
  remote: { needsNetwork: true, takesPowerAway: false, source: 'choice-let-go' },
} as const satisfies Record<string, { needsNetwork: boolean; takesPowerAway: boolean; source: SourceKey }>;

/** What each kind of drive wants of an output, and whether it is gear that steers the boat by hand as well and is sized for her. */
export const driveKinds = {
  'reversing-pump': { works: 'reversing-motor', sizedForBoat: false, source: 'practice-drive-match' },
  'constant-pump': { works: 'solenoid-valves', sizedForBoat: true, source: 'practice-drive-match' },
  linear: { works: 'reversing-motor', sizedForBoat: false, source: 'practice-drive-match' },
  wheel: { works: 'reversing-motor', sizedForBoat: false, source: 'practice-drive-match' },
  tiller: { works: 'reversing-motor', sizedForBoat: false, source: 'practice-drive-match' },
  'stern-drive': { works: 'reversing-motor', sizedForBoat: true, source: 'practice-drive-match' },
} as const satisfies Record<
  string,
  { works: 'reversing-motor' | 'solenoid-valves'; sizedForBoat: boolean; source: SourceKey }
>;
