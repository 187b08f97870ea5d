import type { Sender } from '../survey/sender-book.ts';
import type { SentRecord } from '../survey/sent-book.ts';
import type { HeardMessage } from '../survey/survey.ts';

/** The last message of one kind with and without data, and the longest time without any. */
export interface Evidence {
  readonly sender: Sender;
  readonly pgn: number;
  /** a whole number of `partReader` */
  readonly part: number;
  lastUs: number | undefined;
  last: Uint8Array;
  lastEmptyUs: number | undefined;
  lastEmpty: Uint8Array | undefined;
  longestGapUs: number;
  /** when the longest gap began */
  gapFromUs: number;
}

/** Keeps what can be shown of each message, in memory that grows with the kinds of messages only. */
export interface EvidenceBook {
  take(heard: HeardMessage): void;
  all(): Evidence[];
}

/** A survey stops counting kinds beyond this, and so does the evidence. */
const mostParts = 256;

const copyInto = (before: Uint8Array | undefined, payload: Uint8Array): Uint8Array => {
  if (before?.length !== payload.length) return payload.slice();
  before.set(payload);
  return before;
};

const noteGap = (evidence: Evidence, elapsedUs: number, beforeUs: number): void => {
  if (elapsedUs - beforeUs <= evidence.longestGapUs) return;
  evidence.longestGapUs = elapsedUs - beforeUs;
  evidence.gapFromUs = beforeUs;
};

/** Starts keeping evidence. */
export const startEvidence = (): EvidenceBook => {
  const books = new Map<SentRecord, Map<number, Evidence>>();
  const partsOf = (record: SentRecord): Map<number, Evidence> => {
    const known = books.get(record);
    if (known !== undefined) return known;
    const parts = new Map<number, Evidence>();
    books.set(record, parts);
    return parts;
  };
  return {
    take({ sender, record, payload, elapsedUs }) {
      const parts = partsOf(record);
      const part = record.readPart(payload);
      let evidence = parts.get(part);
      if (evidence === undefined) {
        if (parts.size >= mostParts) return;
        evidence = {
          sender,
          pgn: record.pgn,
          part,
          lastUs: undefined,
          last: payload.slice(),
          lastEmptyUs: undefined,
          lastEmpty: undefined,
          longestGapUs: 0,
          gapFromUs: 0,
        };
        parts.set(part, evidence);
      } else if (elapsedUs !== undefined) {
        noteGap(evidence, elapsedUs, Math.max(evidence.lastUs ?? 0, evidence.lastEmptyUs ?? 0));
      }
      if (record.isEmpty(payload)) {
        evidence.lastEmpty = copyInto(evidence.lastEmpty, payload);
        evidence.lastEmptyUs = elapsedUs;
      } else {
        evidence.last = copyInto(evidence.last, payload);
        evidence.lastUs = elapsedUs;
      }
    },
    all: () => [...books.values()].flatMap((parts) => [...parts.values()]),
  };
};
