import type { SourceKey } from './sources.ts';

interface FusePlace {
  readonly rule: string;
  readonly when: string;
  /** along the wire from the source */
  readonly mostMm: number;
  readonly source: SourceKey;
}

/** How far along the wire from its source protection may sit, by rule. Cranking conductors are left out of all of them. */
export const fusePlaces: readonly FusePlace[] = [
  { rule: 'this project', when: 'everything but engine cranking', mostMm: 178, source: 'choice-fuse-place' },
  { rule: '33 CFR 183.455(b)', when: 'wherever practical', mostMm: 0, source: 'cfr-33-183-455' },
  { rule: '33 CFR 183.455(b)(1)', when: 'not practical at the source', mostMm: 178, source: 'cfr-33-183-455' },
  {
    rule: '33 CFR 183.455(b)(2)',
    when: 'not practical within 178 mm, sheathed or enclosed all the way',
    mostMm: 1016,
    source: 'cfr-33-183-455',
  },
  {
    rule: 'trade wording 7-40-72',
    when: 'straight from a battery, sheathed',
    mostMm: 1829,
    source: 'memory-fuse-places',
  },
  { rule: 'ISO 10133:2012', when: 'from the source', mostMm: 200, source: 'memory-fuse-places' },
  { rule: 'ISO 10133:2012', when: 'from a battery, in sheath or conduit', mostMm: 1800, source: 'memory-fuse-places' },
  {
    rule: 'ISO 13297:2020 with A1:2022 12.3',
    when: 'wire to a charging source that does not limit itself',
    mostMm: 1800,
    source: 'iso-13297',
  },
  { rule: 'ISO 13590:2018', when: 'in general', mostMm: 180, source: 'iso-13590' },
  { rule: 'ISO 13590:2018', when: 'sheathed', mostMm: 500, source: 'iso-13590' },
  { rule: 'ISO 13590:2018', when: 'from a battery', mostMm: 900, source: 'iso-13590' },
];
