import type { WaitingMessage } from './waiting-message.ts';

/** Messages of one frame in the order in which they win, each with all that can keep it waiting. */
export const waitingSet = ({
  takesUs,
  everyUs,
  bitUs,
}: {
  readonly takesUs: readonly number[];
  readonly everyUs: readonly number[];
  readonly bitUs: number;
}): readonly WaitingMessage[] => {
  const all = takesUs.map((us, at) => ({ takesUs: us, everyUs: everyUs[at] ?? 0 }));
  return all.map((message, at) => ({
    frameUs: message.takesUs,
    frames: 1,
    everyUs: message.everyUs,
    blockingUs: Math.max(0, ...all.slice(at + 1).map((lower) => lower.takesUs)),
    winning: all.slice(0, at),
    bitUs,
  }));
};
