import { isFastPacket } from '../../facts/pgns.ts';
import { emptinessOf } from '../decode/main-field.ts';
import { partOf, partReader } from '../decode/message-part.ts';
import { isTold, valuesOf } from '../decode/told-values.ts';
import { type IntervalSample, startIntervals } from '../timing/interval-sample.ts';
import type { SentMessage, SentPart } from './survey-report.ts';

interface PartRecord {
  messages: number;
  empty: number;
  /** the last message with data, where its values are told */
  last: Uint8Array | undefined;
  readonly intervals: IntervalSample;
}

/** One message number from one sender, as it is being surveyed. */
export interface SentRecord {
  readonly pgn: number;
  readonly isFast: boolean;
  frames: number;
  messages: number;
  readonly intervals: IntervalSample;
  readonly parts: Map<number, PartRecord>;
  readonly readPart: (payload: Uint8Array) => number;
  readonly isEmpty: (payload: Uint8Array) => boolean;
  readonly isTold: boolean;
  readonly room: SurveyRoom;
}

/** What one sender sends. */
export interface SentBook {
  /** the record of a message number; undefined when the sender shows more numbers than any device has */
  of(pgn: number): SentRecord | undefined;
  all(): Iterable<SentRecord>;
  summary(): SentMessage[];
}

/** More message numbers, or instances of one, than any device sends: a damaged recording. */
const mostNumbers = 512;
const mostParts = 256;
/** The same of all senders together: a full bus of 252 of them with 32 numbers each, and twice as many instances. */
const mostOfAll = 8192;

/** What the records and parts of all senders may still take: a recording made to fill the memory is not to. */
export interface SurveyRoom {
  records: number;
  parts: number;
}

/** Room for as much as any bus says. */
export const surveyRoom = (): SurveyRoom => ({ records: mostOfAll, parts: 2 * mostOfAll });

/** Keeps a message in the place of the one before: the payload itself is the reader's, and the next frame goes there. */
const keepLast = (part: PartRecord, payload: Uint8Array): void => {
  if (part.last?.length === payload.length) part.last.set(payload);
  else part.last = payload.slice();
};

/** Counts one whole message. */
export const addMessage = (record: SentRecord, payload: Uint8Array, elapsedUs: number | undefined): void => {
  record.messages += 1;
  if (elapsedUs !== undefined) record.intervals.add(elapsedUs);
  const key = record.readPart(payload);
  let part = record.parts.get(key);
  if (part === undefined) {
    if (record.parts.size >= mostParts || record.room.parts === 0) return;
    record.room.parts -= 1;
    part = { messages: 0, empty: 0, last: undefined, intervals: startIntervals() };
    record.parts.set(key, part);
  }
  part.messages += 1;
  if (record.isEmpty(payload)) part.empty += 1;
  else if (record.isTold) keepLast(part, payload);
  // The whole message has its own sample; a second one only tells more where there are parts.
  if (elapsedUs !== undefined && key !== 0) part.intervals.add(elapsedUs);
};

const intervalsOf = (sample: IntervalSample): { medianMs?: number; meanMs?: number } => {
  const medianMs = sample.medianMs();
  const meanMs = sample.meanMs();
  return medianMs === undefined || meanMs === undefined ? {} : { medianMs, meanMs };
};

const partSummary = (record: SentRecord, [key, part]: readonly [number, PartRecord]): SentPart => ({
  ...partOf(key),
  messages: part.messages,
  empty: part.empty,
  ...(part.last === undefined ? {} : { last: valuesOf(record.pgn, part.last) }),
  ...intervalsOf(key === 0 ? record.intervals : part.intervals),
});

const summaryOf = (record: SentRecord): SentMessage => ({
  pgn: record.pgn,
  messages: record.messages,
  ...intervalsOf(record.intervals),
  parts: [...record.parts].sort(([a], [b]) => a - b).map((entry) => partSummary(record, entry)),
});

/** Starts the list of what one sender sends. */
export const startSentBook = (room: SurveyRoom): SentBook => {
  const records = new Map<number, SentRecord>();
  return {
    of(pgn) {
      const known = records.get(pgn);
      if (known !== undefined || records.size >= mostNumbers || room.records === 0) return known;
      room.records -= 1;
      const record: SentRecord = {
        pgn,
        isFast: isFastPacket(pgn),
        frames: 0,
        messages: 0,
        intervals: startIntervals(),
        parts: new Map(),
        readPart: partReader(pgn),
        isEmpty: emptinessOf(pgn),
        isTold: isTold(pgn),
        room,
      };
      records.set(pgn, record);
      return record;
    },
    all: () => records.values(),
    summary: () =>
      [...records.values()]
        .filter((record) => record.messages > 0)
        .sort((a, b) => a.pgn - b.pgn)
        .map(summaryOf),
  };
};
