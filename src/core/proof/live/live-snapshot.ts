import type { ReadingId } from '../../facts/reading-ids.ts';
import type { Level } from '../../plan-shape.ts';
import type { SourceState } from './source-watch.ts';

/** How sure it is that a sender is a unit of the plan. */
export type HowSure = 'identity' | 'sure' | 'alike' | 'doubtful';

/** One sender that was heard. */
export interface LiveSender {
  /** stays the same while listening, also where the sender changes its address */
  readonly id: number;
  /** address it holds now; absent for a talker of NMEA 0183, and for one that lost its own */
  readonly address?: number;
  /** talker letters of NMEA 0183 */
  readonly talker?: string;
  /** it has said who it is */
  readonly named: boolean;
  /** unit of the plan */
  readonly unit?: string;
  readonly how?: HowSure;
  /** since it spoke last */
  readonly ageMs: number;
  /** it should have spoken again by now */
  readonly silent?: true;
  readonly messages: number;
}

/** One reading of one sender. */
export interface LiveReading {
  /** by this its curve is asked for */
  readonly id: number;
  readonly reading: ReadingId;
  readonly instance?: number;
  readonly sender: number;
  readonly unit?: string;
  readonly message: number | string;
  /** the value in words; absent where none is told, or the message came without one */
  readonly says?: string;
  /** its number, as short as can be: `8.2 m` */
  readonly short?: string;
  /** the last message came without a value */
  readonly empty?: true;
  /** since it came last with a value, else since it came at all */
  readonly ageMs: number;
  /** it should have come again by now */
  readonly silent?: true;
  /** it has a number that can be drawn */
  readonly curve?: true;
}

/** What is on a live bus at one moment, small enough to be sent twice a second. */
export interface LiveHeard {
  readonly frames: number;
  readonly sentences: number;
  /** sentences that were damaged on their way */
  readonly damaged: number;
  readonly senders: readonly LiveSender[];
  readonly readings: readonly LiveReading[];
}

/** The last minutes of one reading. */
export interface LiveCurve {
  readonly unit: string;
  readonly round?: true;
  /** age of each point, and its value, from the oldest on */
  readonly points: readonly (readonly [ageMs: number, value: number])[];
}

/** One planned unit of the wires that are listened to. */
export interface LiveUnit {
  readonly unit: string;
  /** `silent` = it spoke and has stopped; `unheard` = it never spoke; `not-due` = it need not have by now */
  readonly state: 'speaking' | 'silent' | 'unheard' | 'not-due';
  /** since it spoke last; absent where it never did */
  readonly ageMs?: number;
}

/** One thing that is not as planned, as the comparison has it. */
export interface LiveFinding {
  readonly id: string;
  readonly level: Level;
  readonly about: readonly string[];
  readonly says: string;
  readonly cure: string;
}

/** One thing that happened while listening, in a sentence. */
export interface LiveNews {
  readonly atMs: number;
  /** what it is about: the source, what was sent, a unit of the plan, something not as planned */
  readonly of: 'source' | 'sent' | 'unit' | 'finding';
  readonly says: string;
}

/** Everything there is to see of a boat that is listened to. */
export interface LiveSnapshot extends LiveHeard {
  readonly atMs: number;
  readonly source: { readonly says: string; readonly state: SourceState; readonly words: string };
  readonly units: readonly LiveUnit[];
  /** the newest first */
  readonly findings: readonly LiveFinding[];
  /** the oldest first */
  readonly news: readonly LiveNews[];
}

/** How a recording stands. */
export type RecordingState =
  | { readonly kind: 'writing'; readonly lines: number; readonly bytes: number }
  /** it could not be written on, and why; listening goes on without it; `lines` are those it has */
  | { readonly kind: 'stopped'; readonly says: string; readonly why: string; readonly lines: number };

/** A snapshot with what goes on beside the bus. */
export interface LiveNow extends LiveSnapshot {
  readonly recording?: RecordingState;
  /** the units are being asked who they are */
  readonly isAsking?: true;
}

/** What a page is told of a boat that is listened to, or that she is not; `file` is the name of the recording. */
export type LiveTold = { readonly listening: false } | ({ readonly listening: true; readonly file?: string } & LiveNow);
