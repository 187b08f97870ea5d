import type { SourceKey } from './sources.ts';

/** Voltages a boat's supply goes by, V, and the share of its name from which a voltage has it. */
export const namedVoltages = {
  source: 'choice-named-volts',
  valuesV: [12, 24, 36, 48],
  fromShare: 0.9,
} as const satisfies {
  readonly source: SourceKey;
  readonly valuesV: readonly number[];
  readonly fromShare: number;
};
