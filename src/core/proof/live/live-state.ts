import { readingsOfSentence } from '../../facts/message-readings.ts';
import { isFastPacket } from '../../facts/pgns.ts';
import { startFastPackets } from '../decode/fast-packet.ts';
import { emptinessOf } from '../decode/main-field.ts';
import { partOf, partReader, readingsSeen } from '../decode/message-part.ts';
import { type SentenceParts, sentenceParts } from '../decode/sentence-parts.ts';
import { valuesOf, valueWords } from '../decode/told-values.ts';
import { pgnOfCanId, sourceOfCanId } from '../readers/can-id.ts';
import type { RecordedFrame } from '../readers/recorded-frame.ts';
import type { RecordedSentence } from '../readers/recording-sink.ts';
import { instanceOf, isProtocol } from '../survey/draft-sends.ts';
import { figureOf, figureOfValues, figureWords } from './live-figure.ts';
import { type HeardReading, startLiveReadings } from './live-readings.ts';
import {
  type HeardSender,
  isSilent,
  type KnownUnits,
  notePace,
  noteSpoken,
  startLiveSenders,
  unitOf,
} from './live-senders.ts';
import type { LiveCurve, LiveHeard, LiveReading, LiveSender } from './live-snapshot.ts';
import { ownPosition } from './own-position.ts';
import { isOverdue } from './pace.ts';
import { positionWords } from './position-words.ts';
import { curveMs } from './sample-ring.ts';
import { sentenceAsMessage } from './sentence-as-message.ts';

/** What is on a live bus, kept up with every frame and sentence. Equal bytes at equal times give equal snapshots. */
export interface LiveState {
  frame(frame: RecordedFrame, nowMs: number): void;
  sentence(sentence: Pick<RecordedSentence, 'text' | 'checksum'>, nowMs: number): void;
  /** says which units of the plan speak from which address, as far as is known by now */
  know(units: KnownUnits): void;
  heard(nowMs: number): LiveHeard;
  /** the last minutes of one reading; undefined where none of that id can be drawn */
  curve(reading: number, nowMs: number): LiveCurve | undefined;
}

const addressClaim = 60_928;

/** Talker, formatter and fields of a sentence; of a maker’s own sentence all letters are its talker. */
const talkOf = (text: string): SentenceParts => {
  const parts = sentenceParts(text.slice(1).split('*')[0] ?? '');
  return parts.talker === 'P' ? { ...parts, talker: parts.formatter, formatter: '' } : parts;
};

/** What is looked up once for each message number. */
const messageReader = (pgn: number) => ({
  isFast: isFastPacket(pgn),
  partKey: partReader(pgn),
  isEmpty: emptinessOf(pgn),
  isProtocol: isProtocol(pgn),
  position: ownPosition(pgn),
});

const ageMs = (nowMs: number, lastMs: number): number => Math.max(0, Math.round(nowMs - lastMs));

const readingEntry = (of: HeardReading, sender: LiveSender | undefined, nowMs: number): LiveReading => ({
  id: of.id,
  reading: of.reading,
  ...(of.instance === undefined ? {} : { instance: of.instance }),
  sender: of.sender,
  ...(sender?.unit === undefined ? {} : { unit: sender.unit }),
  message: of.message,
  ...(of.says === undefined ? {} : { says: of.says }),
  ...(of.figure === undefined ? {} : { short: figureWords(of.figure) }),
  ...(of.isEmpty ? { empty: true as const } : {}),
  ageMs: ageMs(nowMs, of.valueMs ?? of.lastMs ?? nowMs),
  ...(isOverdue(nowMs - (of.lastMs ?? nowMs), of.pace.gapMs() ?? Number.POSITIVE_INFINITY)
    ? { silent: true as const }
    : {}),
  ...(of.ring === undefined ? {} : { curve: true as const }),
});

const senderEntry = (of: HeardSender, known: KnownUnits, nowMs: number): LiveSender => ({
  id: of.id,
  ...(of.address === undefined ? {} : { address: of.address }),
  ...(of.talker === undefined ? {} : { talker: of.talker }),
  named: of.name !== undefined,
  ...unitOf(of, known),
  ageMs: ageMs(nowMs, of.lastMs),
  ...(isSilent(of, nowMs) ? { silent: true as const } : {}),
  messages: of.messages,
});

const curveOf = ({ ring, lastFigure }: HeardReading, nowMs: number): LiveCurve | undefined =>
  ring === undefined
    ? undefined
    : {
        unit: lastFigure?.unit ?? '',
        ...(lastFigure?.round === true ? { round: true as const } : {}),
        points: ring
          .all()
          .map(({ atMs, value }) => [ageMs(nowMs, atMs), Number(value.toPrecision(6))] as const)
          .filter(([age]) => age <= curveMs),
      };

/**
 * Starts with nothing heard. `sentenceOf` names the unit of the plan whose sentence it is, by talker and formatter, where
 * only one can say it.
 */
export const startLiveState = (
  sentenceOf: (talker: string, formatter: string) => string | undefined = () => undefined,
): LiveState => {
  const senders = startLiveSenders();
  const readings = startLiveReadings();
  const packets = startFastPackets();
  const readers = new Map<number, ReturnType<typeof messageReader>>();
  let known: KnownUnits = new Map();
  const counts = { frames: 0, sentences: 0, damaged: 0 };

  const readerOf = (pgn: number): ReturnType<typeof messageReader> => {
    const found = readers.get(pgn) ?? messageReader(pgn);
    readers.set(pgn, found);
    return found;
  };

  return {
    frame(frame, nowMs) {
      if (frame.error || frame.remote || !frame.extended) return;
      counts.frames += 1;
      const pgn = pgnOfCanId(frame.id);
      const address = sourceOfCanId(frame.id);
      const data = frame.data.subarray(0, frame.length);
      const sender = pgn === addressClaim ? senders.claim(address, data) : senders.at(address);
      noteSpoken(sender, nowMs);
      const reader = readerOf(pgn);
      const payload = reader.isFast ? packets.take(frame) : data;
      if (payload === undefined) return;
      if (!reader.isProtocol) notePace(sender, pgn, nowMs);
      const part = partOf(reader.partKey(payload));
      const isEmpty = reader.isEmpty(payload);
      const says = isEmpty ? undefined : (valueWords(pgn, valuesOf(pgn, payload)) ?? reader.position(payload));
      const figure = isEmpty ? undefined : figureOf(pgn, payload);
      for (const reading of readingsSeen({ pgn, kind: part.kind })) {
        const instance = instanceOf(pgn, part);
        const own = reading === 'time-date' ? undefined : says;
        readings.take({ reading, instance, sender: sender.id, message: pgn, says: own, figure, isEmpty }, nowMs);
      }
    },
    sentence({ text, checksum }, nowMs) {
      if (checksum === 'wrong') {
        counts.damaged += 1;
        return;
      }
      counts.sentences += 1;
      const parts = talkOf(text);
      const { talker, formatter, fields } = parts;
      const sender = senders.talker(talker, sentenceOf(talker, formatter));
      noteSpoken(sender, nowMs);
      notePace(sender, formatter, nowMs);
      const as = sentenceAsMessage(parts);
      // a lone letter is a unit or a reference: it tells nothing without its number
      const isEmpty = fields.every((field) => /^[A-Z]?$/.test(field));
      const value = {
        instance: undefined,
        sender: sender.id,
        message: formatter,
        isEmpty,
        says: as === undefined ? undefined : (valueWords(as.pgn, as.values) ?? positionWords(as.values)),
        figure: as === undefined ? undefined : figureOfValues(as.pgn, as.values),
      };
      const given = as === undefined ? [] : readingsSeen({ pgn: as.pgn, kind: as.values.reference });
      for (const { reading, ifSaid, oneOf } of readingsOfSentence(formatter)) {
        // of a sentence that is about several things the words are those of the one that is told
        const isTold = given.includes(reading) || given.length === 0;
        if ((ifSaid === true || oneOf === true) && !given.includes(reading)) continue;
        readings.take(
          isTold ? { ...value, reading } : { ...value, reading, says: undefined, figure: undefined },
          nowMs,
        );
      }
    },
    know: (units) => {
      known = units;
    },
    heard(nowMs) {
      const told = senders.all().map((sender) => senderEntry(sender, known, nowMs));
      return {
        ...counts,
        senders: told,
        readings: readings.all().map((reading) => readingEntry(reading, told[reading.sender], nowMs)),
      };
    },
    curve(reading, nowMs) {
      const of = readings.all()[reading];
      return of === undefined ? undefined : curveOf(of, nowMs);
    },
  };
};
