import type { ConductorSystem } from '../facts/ampacity.ts';
import { awgConductors, awgSizingOrder, dropConstants, metricConductors } from '../facts/conductors.ts';
import { copper } from '../facts/copper.ts';

/** Which copper a gauge is taken to have: the least it may be sold with, or its full nominal area. */
export type AwgAreas = 'least' | 'nominal';

/** One size that a conductor is picked from. */
export interface Conductor {
  readonly system: ConductorSystem;
  /** the gauge ('2/0') or the area in mm² ('2.5') */
  readonly size: string;
  readonly areaMm2: number;
  readonly circularMils: number;
  /** largest resistance of one conductor at 20 °C */
  readonly ohmPerKm20: number;
}

const awgOf = (areas: AwgAreas): readonly Conductor[] =>
  awgConductors.flatMap(({ size, areaMm2, least }) => {
    if (least === undefined || !awgSizingOrder.includes(size)) return [];
    const nominal = { areaMm2, circularMils: areaMm2 / dropConstants.circularMil.value };
    const counted = areas === 'least' ? least : nominal;
    return {
      system: 'awg' as const,
      size,
      areaMm2: counted.areaMm2,
      circularMils: counted.circularMils,
      ohmPerKm20: (copper.resistivity.value * 1000) / counted.areaMm2,
    };
  });

const byAreas = { least: awgOf('least'), nominal: awgOf('nominal') } as const;

const metric: readonly Conductor[] = metricConductors.map(({ areaMm2, class5Tinned }) => ({
  system: 'metric',
  size: String(areaMm2),
  areaMm2,
  circularMils: areaMm2 / dropConstants.circularMil.value,
  ohmPerKm20: class5Tinned,
}));

/**
 * The sizes of a system that a conductor is picked from, thinnest first. A gauge is copper of its least area, because cable
 * sold by number may have no more; metric sizes are tinned class 5, which boats are wired with.
 */
export const conductorsOf = (system: ConductorSystem, areas: AwgAreas = 'least'): readonly Conductor[] =>
  system === 'awg' ? byAreas[areas] : metric;
