import type { ReadingId } from '../../facts/reading-ids.ts';
import type { LiveFigure } from './live-figure.ts';
import { type Pace, startPace } from './pace.ts';
import { type SampleRing, startSampleRing } from './sample-ring.ts';

/** What one message says of one reading. */
export interface HeardValue {
  readonly reading: ReadingId;
  readonly instance: number | undefined;
  /** id of the sender */
  readonly sender: number;
  readonly message: number | string;
  readonly says: string | undefined;
  readonly figure: LiveFigure | undefined;
  /** it came without a value */
  readonly isEmpty: boolean;
}

/** One reading of one sender while it is being heard. */
export interface HeardReading {
  readonly id: number;
  readonly reading: ReadingId;
  readonly instance: number | undefined;
  readonly sender: number;
  readonly message: number | string;
  says: string | undefined;
  isEmpty: boolean;
  /** when it came last with a value; undefined where it never did */
  valueMs: number | undefined;
  lastMs: number | undefined;
  readonly pace: Pace;
  /** of its last message */
  figure: LiveFigure | undefined;
  /** of the last that had one: in what the curve is drawn */
  lastFigure: LiveFigure | undefined;
  ring: SampleRing | undefined;
}

/** Every reading that is heard, one for each sender, message and number. */
export interface LiveReadings {
  take(value: HeardValue, nowMs: number): void;
  all(): readonly HeardReading[];
}

/** More than any two full buses have: damaged data. */
const mostReadings = 1024;
/** A curve takes memory: of so many the last minutes are kept. */
const mostCurves = 256;

/** Starts with nothing heard. */
export const startLiveReadings = (): LiveReadings => {
  const all: HeardReading[] = [];
  const byKey = new Map<string, HeardReading>();
  let curves = 0;

  const readingOf = ({ reading, instance, sender, message }: HeardValue, nowMs: number): HeardReading | undefined => {
    const key = `${sender} ${message} ${reading} ${instance ?? ''}`;
    const known = byKey.get(key);
    if (known !== undefined || all.length >= mostReadings) return known;
    const made: HeardReading = {
      id: all.length,
      reading,
      instance,
      sender,
      message,
      says: undefined,
      isEmpty: true,
      valueMs: undefined,
      lastMs: undefined,
      pace: startPace(nowMs),
      figure: undefined,
      lastFigure: undefined,
      ring: undefined,
    };
    byKey.set(key, made);
    all.push(made);
    return made;
  };

  const draw = (of: HeardReading, { value }: LiveFigure, nowMs: number): void => {
    if (of.ring === undefined) {
      if (curves >= mostCurves) return;
      curves += 1;
      of.ring = startSampleRing();
    }
    of.ring.add({ atMs: nowMs, value });
  };

  return {
    take(value, nowMs) {
      const of = readingOf(value, nowMs);
      if (of === undefined) return;
      if (of.lastMs !== undefined) of.pace.add(nowMs);
      of.lastMs = nowMs;
      of.isEmpty = value.isEmpty;
      of.says = value.says;
      of.figure = value.figure;
      of.lastFigure = value.figure ?? of.lastFigure;
      if (value.isEmpty) return;
      of.valueMs = nowMs;
      if (value.figure !== undefined) draw(of, value.figure, nowMs);
    },
    all: () => all,
  };
};
