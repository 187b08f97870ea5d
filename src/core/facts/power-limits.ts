import { bankLimits } from './day-duty.ts';
import { dropLimits, summedDropWarn } from './drop-limits.ts';
import type { Figure } from './figure.ts';

const electronics = dropLimits.find(({ circuit }) => circuit === 'electronics') ?? { pct: 3, source: 'abyc-e11' };

/** Limits of direct current that an owner may set otherwise; the ids are keys of `limits` in a boat file. */
export const powerLimits = {
  'feed-drop': { value: electronics.pct, unit: '% of the nominal voltage', source: electronics.source },
  'feed-drop-summed': summedDropWarn,
  ...bankLimits,
} as const satisfies Record<string, Figure>;

/** Insulation a new feed is reckoned with, by the system its size is named in: the commonest boat cable of each. */
export const feedInsulation = {
  metric: { value: 90, unit: '°C', source: 'choice-feed-insulation' },
  awg: { value: 105, unit: '°C', source: 'choice-feed-insulation' },
} as const satisfies Record<string, Figure>;
