import type { EssentialFunction } from './essential-functions.ts';
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

/** What is at hand while an essential function is dark; some have nothing that stands in, and then she does not move. */
export const functionFallbacks = {
  'bilge-pump': {
    says: 'a hand pump and a bucket, and somebody who looks into the bilge every hour; not left alone afloat',
    source: 'practice-fallbacks',
  },
  'high-water-alarm': {
    says: 'somebody aboard who looks into the bilge every hour, or a battery water alarm in it',
    source: 'practice-fallbacks',
  },
  'gas-alarm': { says: 'gas shut off at the bottle, and nobody cooks', source: 'practice-fallbacks' },
  'engine-start': { says: 'she stays at the berth, with a spring line doubled', source: 'practice-fallbacks' },
  'engine-stop': {
    says: 'the stop lever at the engine, tried once, and known to all aboard',
    source: 'practice-fallbacks',
  },
  steering: { says: 'the emergency tiller, tried once; else she stays at the berth', source: 'practice-fallbacks' },
  horn: { says: 'a mouth or gas horn at the helm', source: 'practice-fallbacks' },
  'navigation-lights': {
    says: 'battery lights that clip on, else no way after sunset',
    source: 'practice-fallbacks',
  },
  depth: fallbackKit.depth,
  vhf: fallbackKit.radio,
  position: fallbackKit.position,
  heading: fallbackKit.heading,
  ais: { says: 'a lookout, and a call on VHF before a narrow bend', source: 'practice-fallbacks' },
  'shore-charging': {
    says: 'everything off but the pumps, and the batteries read each day',
    source: 'practice-fallbacks',
  },
} as const satisfies Record<EssentialFunction, Carried>;

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
