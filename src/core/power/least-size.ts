import type { ConductorSystem } from '../facts/ampacity.ts';
import { leastSizeExempt, leastSizes } from '../facts/conductors.ts';
import type { SourceKey } from '../facts/sources.ts';

/** What a circuit is, as far as the least size goes; `electronics` is any electronic circuit that is not for navigation. */
export type CircuitUse = 'communications' | 'navigation-electronics' | 'electronics' | 'other';

/** Why no least size binds a conductor. */
export type LeastSizeExemption = 'communications' | 'navigation-electronics' | 'under-1-a' | 'pigtail' | 'short';

/** A conductor as far as its least size goes. */
export interface LeastSizeAsk {
  readonly system: ConductorSystem;
  readonly sheathed: boolean;
  /** the longest part of a sheathed conductor that is out of its sheath */
  readonly outOfSheathMm?: number;
  readonly use: CircuitUse;
  readonly currentA: number;
  readonly lengthMm: number;
}

/** The least size of a conductor, or why it has none. */
export type LeastSize =
  | { readonly binds: true; readonly size: string; readonly rule: string; readonly source: SourceKey }
  | { readonly binds: false; readonly why: LeastSizeExemption };

/**
 * The least size the rules allow: 16 AWG alone and 18 AWG in a sheath (33 CFR 183.425(d) to (f)); 1 mm² alone and 0.75 mm²
 * in a sheath (ISO, second-hand). A conductor too far out of its sheath counts as alone. The American text leaves out
 * communications, electronic navigation equipment, electronic circuits under 1 A and pigtails; the metric one a conductor
 * alone of up to 200 mm.
 *
 * @example leastSize({ system: 'awg', sheathed: false, use: 'other', currentA: 0.5, lengthMm: 900 }) // 16, binding
 */
export const leastSize = (ask: LeastSizeAsk): LeastSize => {
  const why = ask.system === 'awg' ? awgExemption(ask) : metricExemption(ask);
  if (why !== undefined) return { binds: false, why };
  const { alone, sheathed } = rules[ask.system];
  const row = keepsSheath(ask) ? sheathed : alone;
  return { binds: true, size: row.awg ?? String(row.areaMm2), rule: row.rule, source: row.source };
};

const rowOf = (rule: string) => {
  const row = leastSizes.find((one) => one.rule === rule);
  if (row === undefined) throw new Error(`There is no least size by the name ${rule}.`);
  return row;
};

const rules = {
  awg: { alone: rowOf('single conductor'), sheathed: rowOf('conductor in a sheath') },
  metric: { alone: rowOf('single conductor longer than 200 mm'), sheathed: rowOf('conductor in a sheath (ISO)') },
} as const;

const keepsSheath = ({ system, sheathed, outOfSheathMm = 0 }: LeastSizeAsk): boolean =>
  sheathed && outOfSheathMm <= (rules[system].sheathed.outOfSheathMm ?? 0);

const awgExemption = ({ use, currentA, lengthMm }: LeastSizeAsk): LeastSizeExemption | undefined => {
  if (use === 'communications' || use === 'navigation-electronics') return use;
  if (use === 'electronics' && currentA < leastSizeExempt.belowCurrent.value) return 'under-1-a';
  return lengthMm < leastSizeExempt.pigtailBelow.value ? 'pigtail' : undefined;
};

const metricExemption = (ask: LeastSizeAsk): LeastSizeExemption | undefined =>
  !keepsSheath(ask) && ask.lengthMm <= leastSizeExempt.aloneUpTo.value ? 'short' : undefined;
