import type { BrokenPlace, ReaderCounts } from './recording-reader-shape.ts';

const mostPlaces = 20;
const extractChars = 40;
const ellipsis = '…';

/** Counts what a reader found. The counters are open to it, because it is in haste. */
export interface ReaderTally {
  frames: number;
  messages: number;
  sentences: number;
  comments: number;
  recorderNotes: number;
  noiseBytes: number;
  broken(place: BrokenPlace): void;
  /** whether a further place is kept: else there is no need to write it */
  wantsPlace(): boolean;
  counts(ending: { readonly cutShort: boolean }): ReaderCounts;
}

const shown = (byte: number): string =>
  byte >= 0x20 && byte < 0x7f ? String.fromCharCode(byte) : `\\x${byte.toString(16).padStart(2, '0')}`;

/** The beginning of some bytes as text that can be shown anywhere. */
export const extractOf = (bytes: Uint8Array): string =>
  Array.from(bytes.subarray(0, extractChars), shown).join('') + (bytes.length > extractChars ? ellipsis : '');

/** Starts counting. */
export const startTally = (): ReaderTally => {
  const brokenAt: BrokenPlace[] = [];
  let broken = 0;
  const tally: ReaderTally = {
    frames: 0,
    messages: 0,
    sentences: 0,
    comments: 0,
    recorderNotes: 0,
    noiseBytes: 0,
    broken(place) {
      broken += 1;
      if (brokenAt.length < mostPlaces) brokenAt.push(place);
    },
    wantsPlace: () => brokenAt.length < mostPlaces,
    counts: ({ cutShort }) => ({
      frames: tally.frames,
      messages: tally.messages,
      sentences: tally.sentences,
      comments: tally.comments,
      broken,
      brokenAt: [...brokenAt],
      recorderNotes: tally.recorderNotes,
      noiseBytes: tally.noiseBytes,
      cutShort,
    }),
  };
  return tally;
};
