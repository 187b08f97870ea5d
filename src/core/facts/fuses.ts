import type { Figure } from './figure.ts';
import type { SourceKey } from './sources.ts';

interface FuseFamily {
  readonly name: string;
  readonly stepsA: readonly number[];
  readonly source: SourceKey;
}

/** Fuses and breakers by family, and the ratings they are made in, A. */
export const fuseFamilies = {
  glass: { name: 'glass tube', stepsA: [1, 2, 3, 5, 7.5, 10, 15, 20, 25, 30], source: 'memory-fuse-steps' },
  blade: {
    name: 'blade, ISO 8820-3 type C',
    stepsA: [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40],
    source: 'memory-fuse-steps',
  },
  'mini-blade': {
    name: 'mini blade, ISO 8820-3 type F',
    stepsA: [2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30],
    source: 'memory-fuse-steps',
  },
  'maxi-blade': {
    name: 'maxi blade, ISO 8820-3 type E',
    stepsA: [20, 30, 40, 50, 60, 70, 80],
    source: 'memory-fuse-steps',
  },
  'small-bolt-down': {
    name: 'small bolt-down, ISO 8820-5',
    stepsA: [30, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200],
    source: 'memory-fuse-steps',
  },
  'terminal-post': {
    name: 'terminal-post fuse',
    stepsA: [30, 40, 50, 60, 75, 80, 90, 100, 125, 150, 175, 200, 225, 250, 300],
    source: 'memory-fuse-steps',
  },
  'large-bolt-down': {
    name: 'large bolt-down',
    stepsA: [100, 125, 150, 175, 200, 225, 250, 300],
    source: 'memory-fuse-steps',
  },
  anl: {
    name: 'ANL',
    stepsA: [35, 40, 50, 60, 80, 100, 130, 150, 175, 200, 225, 250, 300, 325, 350, 400, 500],
    source: 'memory-fuse-steps',
  },
  'class-t': {
    name: 'class T',
    stepsA: [110, 125, 150, 175, 200, 225, 250, 300, 350, 400],
    source: 'memory-fuse-steps',
  },
  'panel-breaker': { name: 'panel breaker', stepsA: [5, 8, 10, 15, 20, 25, 30, 40, 50], source: 'memory-fuse-steps' },
  'thermal-breaker': {
    name: 'push-reset thermal breaker',
    stepsA: [3, 5, 8, 10, 15, 20, 25, 30],
    source: 'memory-fuse-steps',
  },
} as const satisfies Record<string, FuseFamily>;

/** Every family of fuses and breakers by its id. */
// reason: the keys of an object are strings to the compiler, and these are the ones written above
export const fuseFamilyIds = Object.keys(fuseFamilies) as (keyof typeof fuseFamilies)[];

/** Ratings a device's fuse is picked from where the person has chosen no family, A. */
export const deviceFuses = {
  source: 'memory-fuse-steps',
  stepsA: [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40],
} as const;

/** Colours of blade fuses by rating. */
export const bladeColours = [
  { ratingA: 2, colour: 'grey', source: 'memory-fuse-steps' },
  { ratingA: 3, colour: 'violet', source: 'memory-fuse-steps' },
  { ratingA: 4, colour: 'pink', source: 'memory-fuse-steps' },
  { ratingA: 5, colour: 'tan', source: 'memory-fuse-steps' },
  { ratingA: 7.5, colour: 'brown', source: 'memory-fuse-steps' },
  { ratingA: 10, colour: 'red', source: 'memory-fuse-steps' },
  { ratingA: 15, colour: 'blue', source: 'memory-fuse-steps' },
  { ratingA: 20, colour: 'yellow', source: 'memory-fuse-steps' },
  { ratingA: 25, colour: 'clear', source: 'memory-fuse-steps' },
  { ratingA: 30, colour: 'green', source: 'memory-fuse-steps' },
  { ratingA: 40, colour: 'orange', source: 'memory-fuse-steps' },
] as const;

/** A fuse is at least this much above the steady current at the lowest supply voltage. */
export const fuseMargin = {
  value: 1.25,
  unit: 'x steady current',
  source: 'practice-fuse-size',
} as const satisfies Figure;

/** Volts at which the steady current is taken: the lowest a boat of that name may have. */
export const lowestSupply = {
  '12': { value: 10, unit: 'V', source: 'practice-fuse-size' },
  '24': { value: 20, unit: 'V', source: 'practice-fuse-size' },
} as const satisfies Record<string, Figure>;

/** How far a fuse may be above what its thinnest conductor carries, %: up to `warnAbove` right, above `refuseAbove` refused. */
export const fuseAgainstConductor = {
  warnAbove: { value: 100, unit: '% of the conductor', source: 'choice-fuse-limit' },
  refuseAbove: { value: 150, unit: '% of the conductor', source: 'choice-fuse-limit' },
  /** from these volts on nothing above the conductor is let pass */
  strictFrom: { value: 50, unit: 'V', source: 'cfr-33-183-455' },
} as const satisfies Record<string, Figure>;

interface FuseLimit {
  readonly rule: string;
  readonly pct: number;
  /** where 100 % falls between two ratings, the next one up to this */
  readonly nextSizePct?: number;
  readonly source: SourceKey;
}

/** What the texts say of a fuse against its conductor, % of the conductor's current. */
export const fuseLimits: readonly FuseLimit[] = [
  { rule: '33 CFR 183.455(c)(1), below 50 V', pct: 150, source: 'cfr-33-183-455' },
  { rule: '33 CFR 183.455(c)(2), 50 V and up', pct: 100, nextSizePct: 150, source: 'cfr-33-183-455' },
  { rule: '46 CFR 111.50-3 and 183.380(d)', pct: 100, nextSizePct: 150, source: 'cfr-46-overcurrent' },
  { rule: 'IMO small-craft text 8.2.4', pct: 100, source: 'imo-small-craft' },
  { rule: 'ISO 13297:2020 with A1:2022 13.1.5 (AC clause)', pct: 100, source: 'iso-13297' },
  { rule: 'ISO 13590:2018, personal watercraft', pct: 150, source: 'iso-13590' },
];
