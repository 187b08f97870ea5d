import { isolationTerms, metreMhz } from '../../facts/antenna-figures.ts';

/** Where two antennas stand to each other, centre to centre, and what each gains. */
export interface AntennaPair {
  readonly mhz: number;
  readonly acrossM: number;
  readonly upM: number;
  readonly gainsDbi: readonly [number, number];
}

/** How much weaker one antenna hears what the other sends, dB; `isEstimate` below one wavelength and on a slant. */
export interface Isolation {
  readonly how: 'level' | 'stacked' | 'slant';
  readonly isolationDb: number;
  readonly isEstimate: boolean;
}

export const wavelengthM = (mhz: number): number => metreMhz / mhz;

/** Side by side: free-space loss less what both gain. */
export const sideBySideDb = ({ mhz, acrossM, gainsDbi }: Omit<AntennaPair, 'upM'>): number =>
  isolationTerms.sideBySide.value + 20 * Math.log10(acrossM / wavelengthM(mhz)) - gainsDbi[0] - gainsDbi[1];

/** Exactly one above the other, centre to centre, where neither gains towards the other. */
export const stackedDb = ({ mhz, upM }: Pick<AntennaPair, 'mhz' | 'upM'>): number =>
  isolationTerms.stacked.value + 40 * Math.log10(upM / wavelengthM(mhz));

/** Distance side by side that parts as well as a loss asks, m. */
export const levelDistanceM = (isolationDb: number, { mhz, gainsDbi }: Pick<AntennaPair, 'mhz' | 'gainsDbi'>): number =>
  wavelengthM(mhz) * 10 ** ((isolationDb - isolationTerms.sideBySide.value + gainsDbi[0] + gainsDbi[1]) / 20);

/** The isolation of two antennas by the published formulas of radio sites; no standard stands behind them. */
export const isolationOf = (pair: AntennaPair): Isolation => {
  const wl = wavelengthM(pair.mhz);
  const { acrossM, upM } = pair;
  if (upM === 0) return { how: 'level', isolationDb: sideBySideDb(pair), isEstimate: acrossM < wl };
  if (acrossM === 0) return { how: 'stacked', isolationDb: stackedDb(pair), isEstimate: upM < wl };
  const angleDeg = (Math.atan2(upM, acrossM) * 180) / Math.PI;
  const level = sideBySideDb(pair);
  return { how: 'slant', isolationDb: ((stackedDb(pair) - level) * angleDeg) / 90 + level, isEstimate: true };
};

/** What one antenna hears of what the other sends, dBm. */
export const coupledDbm = (powerW: number, isolationDb: number): number => 10 * Math.log10(powerW * 1000) - isolationDb;

export const wattsOfDbm = (dbm: number): number => 10 ** (dbm / 10) / 1000;
