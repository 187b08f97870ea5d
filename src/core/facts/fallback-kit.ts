import type { Figure } from './figure.ts';
import type { SourceKey } from './sources.ts';

interface Carried {
  readonly says: string;
  readonly source: SourceKey;
}

/** What a person has at hand when a reading is gone from every screen, or no radio talks: it hangs on nothing aboard. */
export const fallbackKit = {
  depth: {
    says: 'a lead line and the chart, kept where a hand finds them in the dark',
    source: 'practice-fallback-kit',
  },
  position: {
    says: 'a paper chart with the last position written on it every hour, and a hand bearing compass',
    source: 'practice-fallback-kit',
  },
  heading: {
    says: 'the magnetic steering compass with its deviation card, or a hand compass held away from iron',
    source: 'practice-fallback-kit',
  },
  radio: { says: 'a handheld VHF, charged, and the distress signals', source: 'practice-fallback-kit' },
} as const satisfies Record<'depth' | 'position' | 'heading' | 'radio', Carried>;

/** Up to what price a reserve is worth a word where the crew has something else to go by. */
export const cheapReserve = {
  value: 40_000,
  unit: 'hundredths of a euro',
  source: 'choice-cheap-reserve',
} as const satisfies Figure;

/** What a bus with one terminator is taken for, with its source. */
export const oneTerminator = {
  says: 'left with one terminator; a short bus often still works then',
  source: 'practice-one-terminator',
} as const satisfies Carried;

/** Kinds of unit that talk to other boats and to the shore (common practice). */
export const talkingKinds: ReadonlySet<string> = new Set(['mfhf-radio', 'radio', 'vhf-radio']);
