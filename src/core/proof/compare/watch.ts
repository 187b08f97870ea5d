import { indexBoat } from '../../boat/boat-index.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import { byCodeUnit } from '../../boat/ids.ts';
import type { Plan } from '../../plan-shape.ts';
import type { RecordedFrame } from '../readers/recorded-frame.ts';
import type { ReaderCounts } from '../readers/recording-reader-shape.ts';
import type { RecordedMessage } from '../readers/recording-sink.ts';
import type { Sender } from '../survey/sender-book.ts';
import { type HeardMessage, startSurvey } from '../survey/survey.ts';
import { startTimeAxis } from '../timing/time-axis.ts';
import { startClaims } from './claim-book.ts';
import { comparedInSentence, comparedValues, isCompared } from './compared-values.ts';
import { startEchoes } from './echo-book.ts';
import { startEvidence } from './evidence-book.ts';
import { startLine } from './line-book.ts';
import { proofReport } from './proof-of-watched.ts';
import type { ProofReport } from './proof-report.ts';
import { startValues } from './value-book.ts';
import type { ValueFrom, Watched, WatchedBus, WatchedLine } from './watched.ts';

/** Watches a boat’s wires, from a recording or as they speak, in memory that stays flat. */
export interface Watch {
  takeFrame(frame: RecordedFrame): void;
  /** a message that the recorder had put together from its frames */
  takeMessage(message: RecordedMessage): void;
  /** a line of NMEA 0183 text; `timeUs` as in a frame, undefined where nobody noted the time */
  takeSentence(line: string, timeUs: number | undefined): void;
  /** all that was taken so far; to be held against the plan together with other watches of the same boat */
  watched(read?: readonly ReaderCounts[]): Watched;
  /** all that was taken so far, held against the plan; may be asked at any time */
  report(read?: readonly ReaderCounts[]): ProofReport;
}

export interface WatchOptions {
  readonly boat: Boat;
  readonly plan: Plan;
  /** the bus that is watched; absent: the one that fits best */
  readonly bus?: string;
  /** the talker whose 0183 line is watched, `kit.port`; absent: the one that fits best */
  readonly talker?: string;
}

const told = (id: string | undefined): { told?: string } => (id === undefined ? {} : { told: id });

const hex = (payload: Uint8Array): string => Array.from(payload, (byte) => byte.toString(16).padStart(2, '0')).join('');

const startBus = (onValues: (heard: HeardMessage) => void) => {
  const evidence = startEvidence();
  const claims = startClaims();
  const echoes = startEchoes<Sender>({ isSelf: false });
  const survey = startSurvey((heard) => {
    evidence.take(heard);
    claims.take(heard);
    const { record, payload, sender, elapsedUs } = heard;
    if (isCompared(record.pgn)) onValues(heard);
    if (!record.isEmpty(payload) && !isAnswer(record.pgn))
      echoes.take({ source: sender, message: record.pgn, content: hex(payload), elapsedUs });
  });
  return { survey, evidence, claims, echoes };
};

/** Answers to one question are alike from everybody. */
const isAnswer = (pgn: number): boolean => pgn < 61_440 || (pgn >= 126_208 && pgn <= 126_998 && pgn !== 126_992);

/**
 * Starts watching a boat against her plan.
 *
 * @example const watch = startWatch({ boat, plan }); watch.takeFrame(frame); watch.report();
 */
export const startWatch = ({ boat, plan, bus, talker }: WatchOptions): Watch => {
  const planned = { index: indexBoat(boat), plan };
  const axis = startTimeAxis();
  const values = startValues<ValueFrom>();
  let nowUs: number | undefined;
  const onBus = startBus(({ sender, record, payload }) => {
    for (const value of comparedValues(record.pgn, payload))
      values.take({ source: sender, message: record.pgn, value, elapsedUs: nowUs, bytes: payload });
  });
  const line = startLine();
  const repeats = startEchoes<string>({ isSelf: true });
  let frames = 0;

  const watched = (read: readonly ReaderCounts[] = []): Watched => {
    const bits = onBus.survey.report(read);
    const onWire: WatchedBus = {
      kind: 'bus',
      ...told(bus),
      survey: bits,
      evidence: onBus.evidence.all(),
      claims: [...onBus.claims.all()].sort((a, b) => a.address - b.address || byCodeUnit(a.name, b.name)),
      asked: onBus.claims.asked(),
      echoes: onBus.echoes.all(),
    };
    const onLine: WatchedLine = { kind: 'line', ...told(talker), line, echoes: repeats.all() };
    const sentences = line.counts.sentences + line.counts.broken > 0;
    return { wires: [...(frames > 0 || !sentences ? [onWire] : []), ...(sentences ? [onLine] : [])], values, read };
  };

  return {
    takeFrame(frame) {
      frames += 1;
      nowUs = axis.advance(frame.timeUs);
      onBus.survey.onFrame(frame);
    },
    takeMessage(message) {
      frames += 1;
      nowUs = axis.advance(message.timeUs);
      onBus.survey.onMessage(message);
    },
    takeSentence(text, timeUs) {
      nowUs = axis.advance(timeUs);
      const taken = line.take(text, timeUs);
      if (taken === undefined) return;
      const { parts, elapsedUs } = taken;
      repeats.take({ source: parts.talker, message: parts.formatter, content: taken.text, elapsedUs });
      for (const value of comparedInSentence(parts))
        values.take({ source: 'line', message: parts.formatter, value, elapsedUs: nowUs, bytes: taken.text });
    },
    watched,
    report: (read) => proofReport(planned, [watched(read)]),
  };
};
