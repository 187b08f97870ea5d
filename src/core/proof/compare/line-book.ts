import { nmea0183 } from '../../facts/nmea0183.ts';
import { readSentence } from '../decode/sentence.ts';
import { isEmptySentence, type SentenceParts, sentenceParts } from '../decode/sentence-parts.ts';
import { type IntervalSample, startIntervals } from '../timing/interval-sample.ts';
import { startTimeAxis, type TimeSummary } from '../timing/time-axis.ts';

/** One kind of sentence as it came. */
export interface SentenceRecord {
  readonly formatter: string;
  readonly talkers: Set<string>;
  count: number;
  empty: number;
  lastEmpty: string | undefined;
  last: string | undefined;
  lastUs: number | undefined;
  longestGapUs: number;
  gapFromUs: number;
  readonly intervals: IntervalSample;
}

/** A sentence as it is taken. */
export interface TakenSentence {
  readonly parts: SentenceParts;
  readonly text: string;
  readonly elapsedUs: number | undefined;
}

/** What one 0183 line carried. */
export interface LineBook {
  /** Takes a line; the sentence in it where it is a whole one with a checksum that is not wrong. */
  take(line: string, timeUs: number | undefined): TakenSentence | undefined;
  records(): readonly SentenceRecord[];
  time(): TimeSummary | undefined;
  readonly counts: LineCounts;
}

/** What was wrong with the lines, with one of each to show. */
export interface LineCounts {
  sentences: number;
  chars: number;
  broken: number;
  checksumWrong: number;
  checksumAbsent: number;
  overLong: number;
  wrong: string | undefined;
  wrongUs: number | undefined;
  long: string | undefined;
  longUs: number | undefined;
}

/** More kinds of sentences than any talker has: a damaged recording. */
const mostKinds = 256;

const newRecord = (formatter: string): SentenceRecord => ({
  formatter,
  talkers: new Set(),
  count: 0,
  empty: 0,
  lastEmpty: undefined,
  last: undefined,
  lastUs: undefined,
  longestGapUs: 0,
  gapFromUs: 0,
  intervals: startIntervals(),
});

const count = (record: SentenceRecord, { parts, text, elapsedUs }: TakenSentence): void => {
  record.count += 1;
  if (record.talkers.size < 8) record.talkers.add(parts.talker);
  if (isEmptySentence(parts)) {
    record.empty += 1;
    record.lastEmpty = text;
  } else record.last = text;
  if (elapsedUs === undefined) return;
  const gapUs = record.lastUs === undefined ? 0 : elapsedUs - record.lastUs;
  if (gapUs > record.longestGapUs) {
    record.longestGapUs = gapUs;
    record.gapFromUs = record.lastUs ?? 0;
  }
  record.lastUs = elapsedUs;
  record.intervals.add(elapsedUs);
};

/** Starts reading one line. */
export const startLine = (): LineBook => {
  const axis = startTimeAxis();
  const records = new Map<string, SentenceRecord>();
  const counts: LineCounts = {
    sentences: 0,
    chars: 0,
    broken: 0,
    checksumWrong: 0,
    checksumAbsent: 0,
    overLong: 0,
    wrong: undefined,
    wrongUs: undefined,
    long: undefined,
    longUs: undefined,
  };

  const recordOf = (formatter: string): SentenceRecord | undefined => {
    const known = records.get(formatter);
    if (known !== undefined || records.size >= mostKinds) return known;
    const made = newRecord(formatter);
    records.set(formatter, made);
    return made;
  };

  return {
    take(line, timeUs) {
      const text = line.trim();
      const read = readSentence(text);
      if (read === undefined) {
        if (text !== '') counts.broken += 1;
        return undefined;
      }
      const elapsedUs = axis.advance(timeUs);
      counts.sentences += 1;
      counts.chars += read.chars;
      if (read.chars > nmea0183.sentenceMost.value) {
        counts.overLong += 1;
        counts.long = text;
        counts.longUs = elapsedUs;
      }
      if (read.checksum === 'absent') counts.checksumAbsent += 1;
      if (read.checksum === 'wrong') {
        counts.checksumWrong += 1;
        counts.wrong = text;
        counts.wrongUs = elapsedUs;
        return undefined;
      }
      const taken = { parts: sentenceParts(read.body), text, elapsedUs };
      const record = recordOf(taken.parts.formatter);
      if (record !== undefined) count(record, taken);
      return taken;
    },
    records: () => [...records.values()],
    time: () => axis.summary(),
    counts,
  };
};
