import type { SourceKey } from './sources.ts';

/** ICNIRP 2020, local exposure above 6 GHz: a factor times frequency in GHz to a power. */
const local2020 = { public: 55, occupational: 275, power: -0.177, source: 'icnirp-2020' } as const satisfies {
  readonly source: SourceKey;
} & Record<string, unknown>;

/** What the newer edition allows at a radar’s frequency, W/m²; shown beside the stricter one that is kept. */
export const icnirp2020WPerM2 = (who: 'public' | 'occupational', ghz: number): number =>
  local2020[who] * ghz ** local2020.power;
