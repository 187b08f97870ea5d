import type { Figure } from './figure.ts';
import type { SourceKey } from './sources.ts';

interface DropLimit {
  readonly circuit: string;
  /** of the nominal voltage */
  readonly pct: number;
  readonly source: SourceKey;
}

/** The drop a feeder may have alone. */
export const feederDrop = {
  value: 3,
  unit: '% of the nominal voltage',
  source: 'abyc-e11',
} as const satisfies Figure;

/** Drop a circuit may have from its source to its consumer, % of the nominal voltage, feeder and branch each alone. */
export const dropLimits: readonly DropLimit[] = [
  { circuit: 'feeder', pct: feederDrop.value, source: feederDrop.source },
  { circuit: 'electronics', pct: 3, source: 'abyc-e11' },
  { circuit: 'navigation-lights', pct: 3, source: 'abyc-e11' },
  { circuit: 'bilge-blower', pct: 3, source: 'abyc-e11' },
  { circuit: 'bilge-pump', pct: 3, source: 'iso-13297' },
  { circuit: 'other-critical', pct: 3, source: 'abyc-e11' },
  { circuit: 'other-lighting', pct: 10, source: 'abyc-e11' },
  { circuit: 'other', pct: 10, source: 'abyc-e11' },
  { circuit: 'any-on-french-fishing-vessel', pct: 5, source: 'division-227' },
];

/** Feeder and branch together: a device feels the sum. */
export const summedDropWarn = {
  value: 3,
  unit: '% of the nominal voltage',
  source: 'choice-summed-drop',
} as const satisfies Figure;
