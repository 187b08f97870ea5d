import type { Figure } from './figure.ts';

/** Speeds that talkers and adapters of a boat run at, the slowest first, bit/s. */
export const usualBauds = [
  { value: 4800, unit: 'baud', source: 'practice-baud' },
  { value: 38_400, unit: 'baud', source: 'practice-baud' },
  { value: 115_200, unit: 'baud', source: 'practice-baud' },
] as const satisfies readonly Figure[];

/** When a source or a sender counts as silent, and what comes in as noise. */
export const listeningFigures = {
  sourceSilentMs: { value: 3000, unit: 'ms', source: 'choice-listening' },
  mostLostShare: { value: 0.5, unit: 'of the bytes', source: 'choice-listening' },
  wrongSpeedShare: { value: 0.95, unit: 'of the bytes', source: 'choice-listening' },
  nextSpeedMs: { value: 2000, unit: 'ms', source: 'choice-listening' },
  senderSilentMs: { value: 3000, unit: 'ms', source: 'choice-listening' },
  takeoverMs: { value: 10_000, unit: 'ms', source: 'choice-listening' },
  senderSilentGaps: { value: 3, unit: 'of its longest usual gap', source: 'choice-listening' },
} as const satisfies Record<string, Figure>;

/** How an address is claimed, and how units are asked who they are. */
export const askingFigures = {
  unopposedMs: { value: 250, unit: 'ms', source: 'iso-11783-5' },
  nullAddress: { value: 254, unit: 'as address', source: 'iso-11783-5' },
  everyone: { value: 255, unit: 'as address', source: 'iso-11783-5' },
  claimsComeMs: { value: 1250, unit: 'ms', source: 'choice-listening' },
  questionGapMs: { value: 200, unit: 'ms', source: 'choice-listening' },
  answersComeMs: { value: 2000, unit: 'ms', source: 'choice-listening' },
} as const satisfies Record<string, Figure>;
