import type { SourceKey } from './sources.ts';

/** Fill of a conduit, % of its bore, by how many cables: shore rules for a first pull. Two cables have the lowest share. */
export const conduitFill = {
  source: 'nec-fill',
  oneCablePct: 53,
  twoCablesPct: 31,
  morePct: 40,
  /** a nipple up to 610 mm long */
  nipplePct: 60,
  /** three equal cables jam where inside diameter / cable lies between these */
  jamRatio: [2.8, 3.2],
} as const;

/** What this project makes of a fill: advice, doubt with hours, or refused. Cables already in a pipe are never refused. */
export const fillVerdict = {
  source: 'choice-fill',
  doubtAbovePct: 40,
  refuseAbovePct: 60,
  adviceTwoCablesAbovePct: 31,
  adviceManyBendsAbovePct: 30,
  manyBends: 2,
} as const;

/** Circle round three and more cables, as a multiple of the root of their squared diameters: what is left beside it lets a plug by. */
export const plugPassage = { source: 'geometry-plug-passage', circleOfMany: 1.25 } as const;

/** Bores conduits are sold in, mm. */
export const conduitBores = { source: 'practice-bores', boresMm: [16, 20, 25, 32, 40, 50] } as const;

interface Support {
  readonly rule: string;
  readonly everyMm: number;
  readonly source: SourceKey;
}

/** How often a cable is held, by rule; 450 mm and 300 mm for battery leads unless the flag asks another. */
export const supports: readonly Support[] = [
  { rule: 'ISO 10133:2012 7.3', everyMm: 450, source: 'iso-13297' },
  { rule: 'ISO 10133:2012 7.4, battery conductors up to the switch', everyMm: 300, source: 'iso-13297' },
  { rule: 'ABYC E-11 (18 in)', everyMm: 457, source: 'memory-supports' },
  { rule: '46 CFR 183.340(b)(4), metal supports', everyMm: 610, source: 'cfr-46-183-340' },
  { rule: '46 CFR 143, towing vessels', everyMm: 1219, source: 'cfr-46-143' },
  { rule: 'France, Division 227', everyMm: 250, source: 'division-227' },
];

interface CrimpPull {
  readonly awg: string;
  readonly pull?: { readonly newtons: number; readonly source: SourceKey };
  readonly least?: { readonly newtons: number; readonly source: SourceKey };
}

/** Pull a crimp stands for one minute, by gauge. */
export const crimpPulls: readonly CrimpPull[] = [
  { awg: '22', pull: { newtons: 36, source: 'practice-crimp' } },
  { awg: '20', pull: { newtons: 58, source: 'practice-crimp' } },
  { awg: '18', pull: { newtons: 89, source: 'practice-crimp' }, least: { newtons: 44, source: 'memory-crimp' } },
  { awg: '16', pull: { newtons: 134, source: 'practice-crimp' }, least: { newtons: 66, source: 'memory-crimp' } },
  { awg: '14', pull: { newtons: 223, source: 'practice-crimp' }, least: { newtons: 133, source: 'memory-crimp' } },
  { awg: '12', pull: { newtons: 312, source: 'practice-crimp' }, least: { newtons: 155, source: 'memory-crimp' } },
  { awg: '10', pull: { newtons: 356, source: 'practice-crimp' }, least: { newtons: 177, source: 'memory-crimp' } },
  { awg: '8', pull: { newtons: 401, source: 'practice-crimp' }, least: { newtons: 200, source: 'memory-crimp' } },
  { awg: '6', pull: { newtons: 445, source: 'practice-crimp' }, least: { newtons: 222, source: 'memory-crimp' } },
  { awg: '4', pull: { newtons: 623, source: 'practice-crimp' }, least: { newtons: 311, source: 'memory-crimp' } },
  { awg: '2', pull: { newtons: 801, source: 'practice-crimp' }, least: { newtons: 400, source: 'memory-crimp' } },
  { awg: '1/0', pull: { newtons: 1113, source: 'practice-crimp' }, least: { newtons: 556, source: 'memory-crimp' } },
  { awg: '2/0', pull: { newtons: 1235, source: 'practice-crimp' }, least: { newtons: 667, source: 'memory-crimp' } },
  { awg: '4/0', least: { newtons: 1000, source: 'memory-crimp' } },
];
