import { byCodeUnit } from '../../boat/ids.ts';
import { nmea0183 } from '../../facts/nmea0183.ts';
import { startAisSentences } from '../decode/ais-sentences.ts';
import { isEmptySentence, type SentenceParts, sentenceParts } from '../decode/sentence-parts.ts';
import type { RecordedSentence } from '../readers/recording-sink.ts';
import { type IntervalSample, startIntervals } from '../timing/interval-sample.ts';
import { startTimeAxis } from '../timing/time-axis.ts';
import { startDayClock } from './day-clock.ts';
import type { AisSummary, SentenceReport, SentSentence } from './sentence-survey-report.ts';

/** Surveys the sentences of recordings, in memory that stays flat. */
export interface SentenceSurvey {
  take(sentence: RecordedSentence): void;
  /** undefined where there was none */
  report(): SentenceReport | undefined;
}

interface Kind {
  readonly talker: string;
  readonly formatter: string;
  count: number;
  empty: number;
  longestChars: number;
  readonly intervals: IntervalSample;
}

/** More kinds of sentences, or ships, than any recording has: damage. */
const mostKinds = 512;
const mostShips = 100_000;

/** Field of the time of day, of the sentences that tell one. */
const timeFields: Readonly<Partial<Record<string, number>>> = { GGA: 0, GNS: 0, RMC: 0, ZDA: 0, GLL: 4 };

const startAis = () => {
  const ais = startAisSentences();
  const messages = new Map<string, { formatter: string; type: number; count: number }>();
  const ships = new Set<number>();
  return {
    take(text: string): void {
      const report = ais.take(text);
      if (report === undefined) return;
      const { type, own, mmsi } = report;
      const formatter = own ? 'VDO' : 'VDM';
      const before = messages.get(`${formatter} ${type}`);
      messages.set(`${formatter} ${type}`, { formatter, type, count: (before?.count ?? 0) + 1 });
      if (ships.size < mostShips) ships.add(mmsi);
    },
    summary(): AisSummary | undefined {
      const { sentences, incomplete, notDecodable } = ais.counts();
      if (sentences === 0) return undefined;
      const byType = [...messages.values()].sort((a, b) => byCodeUnit(a.formatter, b.formatter) || a.type - b.type);
      return { sentences, messages: byType, incomplete, notDecodable, ships: ships.size };
    },
  };
};

const kindSummary = ({ intervals, ...kind }: Kind): SentSentence => {
  const medianMs = intervals.medianMs();
  return { ...kind, ...(medianMs === undefined ? {} : { medianMs }) };
};

/** Starts the survey of sentences, of one line or of several recorded together. */
export const startSentenceSurvey = (): SentenceSurvey => {
  const axis = startTimeAxis();
  const clock = startDayClock();
  const ais = startAis();
  const kinds = new Map<string, Kind>();
  const tally = { sentences: 0, checksumWrong: 0, checksumAbsent: 0, overLong: 0, chars: 0 };

  const kindOf = ({ talker, formatter }: SentenceParts): Kind | undefined => {
    const key = `${talker} ${formatter}`;
    const known = kinds.get(key);
    if (known !== undefined || kinds.size >= mostKinds) return known;
    const kind = { talker, formatter, count: 0, empty: 0, longestChars: 0, intervals: startIntervals() };
    kinds.set(key, kind);
    return kind;
  };

  const count = (parts: SentenceParts, { chars }: RecordedSentence, elapsedUs: number | undefined): void => {
    const kind = kindOf(parts);
    if (kind === undefined) return;
    kind.count += 1;
    kind.longestChars = Math.max(kind.longestChars, chars);
    if (isEmptySentence(parts)) kind.empty += 1;
    if (elapsedUs !== undefined) kind.intervals.add(elapsedUs);
  };

  return {
    take(sentence) {
      const { text, checksum, chars, timeUs } = sentence;
      tally.sentences += 1;
      tally.chars += chars;
      if (chars > nmea0183.sentenceMost.value) tally.overLong += 1;
      if (checksum === 'wrong') {
        tally.checksumWrong += 1;
        return;
      }
      if (checksum === 'absent') tally.checksumAbsent += 1;
      const elapsedUs = axis.advance(timeUs);
      const star = text.lastIndexOf('*');
      const parts = sentenceParts(text.slice(1, star < 0 ? undefined : star));
      count(parts, sentence, elapsedUs);
      const timeField = timeFields[parts.formatter];
      if (timeField !== undefined) clock.take(parts.fields[timeField]);
      if (text.startsWith('!')) ais.take(text);
    },
    report() {
      if (tally.sentences === 0) return undefined;
      const stamped = axis.summary();
      const spanS = stamped === undefined ? clock.spanS() : stamped.durationUs / 1_000_000;
      const heard = ais.summary();
      return {
        ...tally,
        ...(spanS === undefined ? {} : { spanS }),
        kinds: [...kinds.values()]
          .sort((a, b) => byCodeUnit(a.talker, b.talker) || byCodeUnit(a.formatter, b.formatter))
          .map(kindSummary),
        ...(heard === undefined ? {} : { ais: heard }),
      };
    },
  };
};
