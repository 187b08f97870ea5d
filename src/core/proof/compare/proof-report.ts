import type { ReadingId } from '../../facts/reading-ids.ts';
import type { Level } from '../../plan-shape.ts';

/** Load of a watched bus beside the planned one, % of 250 kbit/s. */
export interface ProofLoad {
  readonly exactPct: number;
  readonly worstPct: number;
  readonly plannedAveragePct: number;
  readonly plannedWorstPct: number;
  readonly busiest: { readonly second: number; readonly exactPct: number; readonly worstPct: number };
}

/** How full a watched 0183 line was, and what was wrong with its sentences. */
export interface ProofLine {
  readonly baud: number;
  /** absent without time */
  readonly charsPerS?: number;
  readonly sharePct?: number;
  readonly plannedSharePct: number;
  readonly checksumWrong: number;
  readonly checksumAbsent: number;
  readonly overLong: number;
}

/** One wire that was watched: a bus, or the line of one 0183 talker. */
export interface ProofWire {
  /** id of the bus, or `kit.port` of the talker */
  readonly id: string;
  readonly kind: 'bus' | 'line';
  /** how it is known which wire of the boat it is: said, the only one, the one that fits best, or none fits */
  readonly known: 'told' | 'only' | 'fits' | 'unsure';
  /** frames of a bus, sentences of a line */
  readonly count: number;
  /** lines or records that could not be read */
  readonly broken: number;
  readonly cutShort: boolean;
  readonly errorFrames: number;
  /** absent when the recording tells no time */
  readonly time?: {
    readonly durationS: number;
    readonly longestSilenceS: number;
    readonly clockSteps: readonly { readonly atFrame: number; readonly jumpS: number }[];
  };
  readonly load?: ProofLoad;
  readonly line?: ProofLine;
  readonly fastPackets?: { readonly complete: number; readonly lost: number; readonly orphan: number };
}

/**
 * How a planned unit was found: `found`; `alike` = found, but another unit of the plan sends the very same, so that either
 * may be meant; `doubtful` = it may be this one; `silent` = not heard; `not-due` = not heard, and it need not have been.
 */
export type UnitState = 'found' | 'alike' | 'doubtful' | 'silent' | 'not-due';

/** One planned unit on one watched wire. */
export interface ProofUnit {
  readonly unit: string;
  readonly on: string;
  readonly state: UnitState;
  /** what it was known by */
  readonly by?: 'identity' | 'kind-and-messages' | 'talker';
  /** of `alike` and `doubtful`: the other units it could be */
  readonly orElse: readonly string[];
  /** every address it sent from, in order of use */
  readonly addresses: readonly number[];
  /** its NAME without maker and number */
  readonly identity?: string;
  /** what it says it is, in plain words */
  readonly calls?: string;
  readonly instances: readonly { readonly message: number; readonly instances: readonly number[] }[];
  readonly len?: number;
}

/** How a planned message came. `not-due`: only an event sends it, or the recording is too short to say. */
export type MessageState = 'right' | 'silent' | 'empty' | 'too-seldom' | 'too-often' | 'not-due';

/** One message a port is planned to send, and how it came. */
export interface ProofMessage {
  /** `kit.port` */
  readonly port: string;
  readonly on: string;
  readonly message: number | string;
  /** planned instances, where the message carries any */
  readonly instances: readonly number[];
  readonly plannedMs?: number;
  readonly seenMs?: number;
  readonly count: number;
  readonly empty: number;
  readonly state: MessageState;
}

/** One reading that the plan takes from a source, and whether it was heard from there. */
export interface ProofReading {
  readonly reading: ReadingId;
  readonly instance?: number;
  /** `kit.port` that first puts it on a wire that was watched, else on any */
  readonly from: string;
  /** the wire; absent where it travels by none that can be watched so */
  readonly on?: string;
  /** screens that rely on it */
  readonly at: readonly string[];
  readonly must: boolean;
  readonly state: 'heard' | 'silent' | 'not-due' | 'not-watched';
  readonly message?: number | string;
  /** the last value, in words that may be shown */
  readonly says?: string;
}

/** One sender that no unit of the plan stands for. */
export interface ProofStranger {
  readonly on: string;
  /** address held last; absent for one that lost its own, and on a 0183 line */
  readonly address?: number;
  readonly identity?: string;
  readonly what: string;
  readonly sends: string;
  /** planned units it could be */
  readonly couldBe: readonly string[];
}

/** One thing a watched wire showed that is not as planned. */
export interface ProofFinding {
  /** check, then what it is about */
  readonly id: string;
  readonly check: string;
  readonly level: Level;
  /** ids of the boat, sorted */
  readonly about: readonly string[];
  readonly says: string;
  /** the device in words */
  readonly device?: string;
  readonly message?: number | string;
  /** seconds from the start of the recording */
  readonly atS?: number;
  /** the message in hexadecimal, or the sentence; left out where it would tell a ship or a serial number */
  readonly bytes?: string;
  /** what to do aboard */
  readonly cure: string;
}

/** A watched boat held against her plan: plain data, sorted, equal for equal input. */
export interface ProofReport {
  readonly format: 1;
  readonly boat: string;
  readonly wires: readonly ProofWire[];
  readonly units: readonly ProofUnit[];
  readonly messages: readonly ProofMessage[];
  readonly readings: readonly ProofReading[];
  readonly strangers: readonly ProofStranger[];
  readonly findings: readonly ProofFinding[];
}
