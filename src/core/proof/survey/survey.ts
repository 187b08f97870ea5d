import { unstuffedBits, worstBits } from '../../traffic/frame-length.ts';
import { startFastPackets } from '../decode/fast-packet.ts';
import { exactBits } from '../decode/frame-bits.ts';
import { type DeviceName, readName } from '../decode/name-field.ts';
import { readProductInformation } from '../decode/product-information.ts';
import { pgnOfCanId, sourceOfCanId } from '../readers/can-id.ts';
import type { RecordedFrame } from '../readers/recorded-frame.ts';
import type { ReaderCounts } from '../readers/recording-reader-shape.ts';
import type { RecordedMessage, RecordedSentence } from '../readers/recording-sink.ts';
import { startSeconds } from '../timing/busiest-second.ts';
import { startTimeAxis } from '../timing/time-axis.ts';
import { type Sender, startSenderBook } from './sender-book.ts';
import { addMessage, type SentRecord } from './sent-book.ts';
import { startSentenceSurvey } from './sentence-survey.ts';
import type { SurveyReport } from './survey-report.ts';
import { type SurveyTallies, surveySummary } from './survey-summary.ts';

/** One whole message as it is surveyed; good until the next. */
export interface HeardMessage {
  readonly sender: Sender;
  /** the one it came from; of a claim also one that cannot be kept */
  readonly address: number;
  /** where the survey counts this message number of this sender: the same object each time */
  readonly record: SentRecord;
  readonly payload: Uint8Array;
  /** since the first frame; undefined where the recording tells no time */
  readonly elapsedUs: number | undefined;
}

/** Surveys recordings of one bus, frame by frame, in memory that stays flat. A reader hands it all it finds. */
export interface Survey {
  readonly onFrame: (frame: RecordedFrame) => void;
  readonly onMessage: (message: RecordedMessage) => void;
  readonly onSentence: (sentence: RecordedSentence) => void;
  /** Everything found so far; `read` = what the readers of the recordings counted beside the frames. */
  report(read?: readonly ReaderCounts[]): SurveyReport;
}

const addressClaim = 60_928;
const isoRequest = 59_904;
const productInformation = 126_996;
/** More message numbers asked for than any bus knows: a damaged recording. */
const mostRequests = 4096;

/** The bytes of a frame, in place where it is a full one. */
const dataOf = ({ data, length }: RecordedFrame): Uint8Array => (length === 8 ? data : data.subarray(0, length));

const startTallies = (): SurveyTallies => ({
  frames: 0,
  joined: 0,
  shortFrames: 0,
  errorFrames: 0,
  remoteFrames: 0,
  exactBits: 0,
  unstuffedBits: 0,
  worstBits: 0,
  leftOut: 0,
  claims: 0,
  framesByAddress: new Array<number>(256).fill(0),
  requests: new Map(),
});

/**
 * Starts the survey of a bus. Give it to a recording reader, to several one after the other if need be.
 *
 * `onHeard` is told of each whole message.
 *
 * @example const survey = startSurvey(); const reader = startRecordingReader(survey);
 */
export const startSurvey = (onHeard?: (heard: HeardMessage) => void): Survey => {
  const axis = startTimeAxis();
  const seconds = startSeconds();
  const packets = startFastPackets();
  const senders = startSenderBook();
  const tallies = startTallies();
  const sentences = startSentenceSurvey();

  const addBits = (frame: RecordedFrame, elapsedUs: number | undefined): void => {
    const dataBytes = frame.remote ? 0 : frame.length;
    const exact = exactBits(frame);
    const worst = worstBits(dataBytes, frame.extended);
    tallies.exactBits += exact;
    tallies.worstBits += worst;
    tallies.unstuffedBits += unstuffedBits(dataBytes, frame.extended);
    if (elapsedUs !== undefined) seconds.add({ elapsedUs, exactBits: exact, worstBits: worst });
  };

  const senderOf = (address: number, name: DeviceName | undefined): Sender => {
    if (name === undefined) return senders.at(address);
    tallies.claims += 1;
    return senders.claim(address, name);
  };

  const noteProtocol = (pgn: number, payload: Uint8Array, sender: Sender): void => {
    if (pgn === productInformation) sender.product = readProductInformation(payload) ?? sender.product;
    if (pgn !== isoRequest || payload.length < 3) return;
    const asked = (payload[0] ?? 0) | ((payload[1] ?? 0) << 8) | ((payload[2] ?? 0) << 16);
    const count = tallies.requests.get(asked);
    if (count !== undefined || tallies.requests.size < mostRequests) tallies.requests.set(asked, (count ?? 0) + 1);
  };

  const decode = (frame: RecordedFrame, elapsedUs: number | undefined): void => {
    const pgn = pgnOfCanId(frame.id);
    const address = sourceOfCanId(frame.id);
    tallies.framesByAddress[address] = (tallies.framesByAddress[address] ?? 0) + 1;
    // Views of the data are made only where they are needed: this runs a million times a second.
    const sender = senderOf(address, pgn === addressClaim ? readName(dataOf(frame)) : undefined);
    sender.frames += 1;
    const record = sender.sent.of(pgn);
    if (record === undefined) {
      tallies.leftOut += 1;
      return;
    }
    record.frames += 1;
    const payload = record.isFast ? packets.take(frame) : dataOf(frame);
    if (payload === undefined) return;
    noteProtocol(pgn, payload, sender);
    addMessage(record, payload, elapsedUs);
    onHeard?.({ sender, address, record, payload, elapsedUs });
  };

  return {
    onFrame(frame) {
      const elapsedUs = axis.advance(frame.timeUs);
      tallies.frames += 1;
      if (frame.error) {
        tallies.errorFrames += 1;
        return;
      }
      addBits(frame, elapsedUs);
      if (frame.remote) tallies.remoteFrames += 1;
      else if (frame.extended) decode(frame, elapsedUs);
      if (!frame.extended) tallies.shortFrames += 1;
    },
    /** A message joined by the recorder: its frames, and with them the load, are not known. */
    onMessage({ timeUs, pgn, source, data }) {
      const elapsedUs = axis.advance(timeUs);
      tallies.joined += 1;
      const sender = senderOf(source, pgn === addressClaim ? readName(data) : undefined);
      const record = sender.sent.of(pgn);
      if (record === undefined) {
        tallies.leftOut += 1;
        return;
      }
      noteProtocol(pgn, data, sender);
      addMessage(record, data, elapsedUs);
      onHeard?.({ sender, address: source, record, payload: data, elapsedUs });
    },
    onSentence: sentences.take,
    report: (read = []) =>
      surveySummary({
        tallies,
        senders: senders.all(),
        time: axis.summary(),
        busiest: seconds.busiest(),
        fastPackets: packets.counts(),
        read,
        sentences: sentences.report(),
      }),
  };
};
