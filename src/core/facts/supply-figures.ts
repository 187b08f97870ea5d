import type { Figure } from './figure.ts';
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

/** Share of its nominal voltage that a sound bank may fall to while the starter turns: 9.6 V of 12 V. */
export const crankingShare = {
  value: 0.8,
  unit: 'V for each V of its name',
  source: 'practice-load-test',
} as const satisfies Figure;

/** Kinds of unit, as sheets name them, that a fuse must not take all of: to call, to know where you are, to see it. */
export const vitalKinds = {
  source: 'cfr-46-28-860',
  radio: ['vhf-radio', 'mfhf-radio'],
  screen: ['display', 'plotter'],
} as const satisfies { readonly source: SourceKey } & Record<'radio' | 'screen', readonly string[]>;

/** Kinds of unit that are motors, beside every unit whose sheet has a drive, and the words that name one in a circuit. */
export const motorKinds = {
  source: 'practice-separate-feeds',
  kinds: ['pilot', 'pilot-computer', 'steering-drive', 'thruster', 'windlass', 'winch', 'pump'],
  words: ['thruster', 'windlass', 'capstan', 'winch', 'pilot drive', 'pilot pump'],
} as const satisfies {
  readonly source: SourceKey;
  readonly kinds: readonly string[];
  readonly words: readonly string[];
};

/** Kinds of unit that a dip of the volts starts anew. */
export const screenKinds = {
  source: 'practice-separate-feeds',
  kinds: ['display', 'instrument', 'plotter', 'computer', 'radar', 'sounder', 'tablet'],
} as const satisfies { readonly source: SourceKey; readonly kinds: readonly string[] };

/** What a converter may give for long, % of the rating on its plate. */
export const converterLoad = {
  value: 100,
  unit: '% of its rating',
  source: 'choice-converter-load',
} as const satisfies Figure;

/** How many taps there may be between the batteries of a bank. */
export const middleTaps = { value: 0, unit: 'taps', source: 'practice-middle-tap' } as const satisfies Figure;

/** How many circuits may feed one unit, panel or converter. */
export const feedsOfOne = { value: 1, unit: 'feeds', source: 'practice-separate-feeds' } as const satisfies Figure;

/** At how many points the negatives of a boat meet. */
export const commonNegatives = {
  value: 1,
  unit: 'common points',
  source: 'practice-cautions',
} as const satisfies Figure;
