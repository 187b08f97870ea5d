import type { Figure } from './figure.ts';

/** How far a watched bus or line may be from its plan before it is told. None is published: project choices, but for what a line carries. */
export const proofLimits = {
  /** of the planned interval */
  intervalLeast: { value: 0.5, unit: 'times the planned interval', source: 'choice-proof' },
  intervalMost: { value: 2, unit: 'times the planned interval', source: 'choice-proof' },
  /** a message or a unit is missed only in a recording of so many planned intervals */
  intervalsToMiss: { value: 3, unit: 'planned intervals', source: 'choice-proof' },
  gap: { value: 10, unit: 'times the planned interval', source: 'choice-proof' },
  silenceLeast: { value: 1, unit: 's', source: 'choice-proof' },
  headingApart: { value: 5, unit: '°', source: 'choice-proof' },
  depthApart: { value: 0.5, unit: 'm', source: 'choice-proof' },
  variationApart: { value: 0.5, unit: '°', source: 'choice-proof' },
  positionApart: { value: 50, unit: 'm', source: 'choice-proof' },
  windAngleApart: { value: 10, unit: '°', source: 'choice-proof' },
  windSpeedApart: { value: 3, unit: 'kn', source: 'choice-proof' },
  /** a variation less than this hides in what a compass errs */
  variationTold: { value: 2, unit: '°', source: 'choice-proof' },
  /** two headings apart by the variation within this are the same heading, one of them marked wrongly */
  variationMet: { value: 0.4, unit: '°', source: 'choice-proof' },
  /** comparisons before anything is said */
  comparisons: { value: 10, unit: 'values side by side', source: 'choice-proof' },
  courseShare: { value: 0.95, unit: 'of the headings', source: 'choice-proof' },
  offsetApart: { value: 0.1, unit: 'm', source: 'choice-proof' },
  loadLeast: { value: 0.5, unit: 'of the planned load', source: 'choice-proof' },
  loadMost: { value: 1.2, unit: 'of the planned load', source: 'choice-proof' },
  /** seconds of recording before its load is held against the plan */
  loadAfter: { value: 5, unit: 's', source: 'choice-proof' },
  echoes: { value: 3, unit: 'repeats of different contents', source: 'choice-proof' },
  /** of what the repeater sends under that number: what two units happen to say alike is no echo */
  echoShare: { value: 0.5, unit: 'of the messages', source: 'choice-proof' },
  /** of the long messages */
  lostShare: { value: 0.01, unit: 'of the long messages', source: 'choice-proof' },
  /** the last address a unit should claim; 252 and 253 are for few, 254 says that none was to be had */
  lastAddress: { value: 251, unit: 'address', source: 'choice-proof' },
} as const satisfies Record<string, Figure>;
