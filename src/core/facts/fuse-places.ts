import type { SourceKey } from './sources.ts';

/** One rule for the distance of protection from its source. */
export interface FusePlaceRow {
  readonly id: string;
  readonly rule: string;
  readonly when: string;
  /** along the wire from the source */
  readonly mostMm: number;
  readonly source: SourceKey;
}

/** How far along the wire from its source protection may sit, by rule. Cranking conductors are left out of all of them. */
const fusePlaces = [
  {
    id: 'project',
    rule: 'this project',
    when: 'everything but engine cranking',
    mostMm: 178,
    source: 'choice-fuse-place',
  },
  { id: 'cfr-at-source', rule: '33 CFR 183.455(b)', when: 'wherever practical', mostMm: 0, source: 'cfr-33-183-455' },
  {
    id: 'cfr-near',
    rule: '33 CFR 183.455(b)(1)',
    when: 'not practical at the source',
    mostMm: 178,
    source: 'cfr-33-183-455',
  },
  {
    id: 'cfr-sheathed',
    rule: '33 CFR 183.455(b)(2)',
    when: 'not practical within 178 mm, sheathed or enclosed all the way',
    mostMm: 1016,
    source: 'cfr-33-183-455',
  },
  {
    id: 'trade-battery',
    rule: 'trade wording 7-40-72',
    when: 'straight from a battery, sheathed',
    mostMm: 1829,
    source: 'memory-fuse-places',
  },
  { id: 'iso-source', rule: 'ISO 10133:2012', when: 'from the source', mostMm: 200, source: 'memory-fuse-places' },
  {
    id: 'iso-battery',
    rule: 'ISO 10133:2012',
    when: 'from a battery, in sheath or conduit',
    mostMm: 1800,
    source: 'memory-fuse-places',
  },
  {
    id: 'iso-charging',
    rule: 'ISO 13297:2020 with A1:2022 12.3',
    when: 'wire to a charging source that does not limit itself',
    mostMm: 1800,
    source: 'iso-13297',
  },
  { id: 'iso-13590', rule: 'ISO 13590:2018', when: 'in general', mostMm: 180, source: 'iso-13590' },
  { id: 'iso-13590-sheathed', rule: 'ISO 13590:2018', when: 'sheathed', mostMm: 500, source: 'iso-13590' },
  { id: 'iso-13590-battery', rule: 'ISO 13590:2018', when: 'from a battery', mostMm: 900, source: 'iso-13590' },
] as const satisfies readonly FusePlaceRow[];

const byId: ReadonlyMap<string, FusePlaceRow> = new Map(fusePlaces.map((row) => [row.id, row]));

/** The rule of that id. */
export const fusePlaceRow = (id: (typeof fusePlaces)[number]['id']): FusePlaceRow => {
  const row = byId.get(id);
  if (row === undefined) throw new Error(`There is no rule for the place of a fuse by the id ${id}.`);
  return row;
};
