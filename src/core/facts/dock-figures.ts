import type { Figure } from './figure.ts';
import type { SourceKey } from './sources.ts';

/** What the tests at the dock reckon with beside the windows of `dock-tests.ts`. */
export const dockFigures = {
  /** how far one terminator may be off */
  terminatorPct: { value: 5, unit: '%', source: 'computed-bus-ohm' },
  /** what a hand meter adds: a share of what it reads, and its own leads */
  meterPct: { value: 1, unit: '%', source: 'choice-dock-meter' },
  leadsOhm: { value: 0.5, unit: 'ohm', source: 'choice-dock-meter' },
  /** over this a meter shows nothing between two wires: they count as open */
  openOhm: { value: 20_000_000, unit: 'ohm', source: 'choice-dock-meter' },
  /** what a sound bus may show of volts with its breaker off */
  deadMostV: { value: 0.5, unit: 'V', source: 'practice-dead-bus' },
  /** A against B of an idle 0183 pair: at least so far under it */
  pairIdleMostV: { value: -0.2, unit: 'V', source: 'practice-0183-idle' },
} as const satisfies Record<string, Figure>;

/** Volts against a metal hull have no figure: only what changes is told. */
export const hullVoltsSource: SourceKey = 'practice-hull-volts';
