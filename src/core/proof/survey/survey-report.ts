import type { FastPacketCounts } from '../decode/fast-packet.ts';
import type { DeviceName } from '../decode/name-field.ts';
import type { ProductInformation } from '../decode/product-information.ts';
import type { FieldValues } from '../decode/read-field.ts';
import type { BrokenPlace } from '../readers/recording-reader-shape.ts';
import type { ClockStep } from '../timing/time-axis.ts';
import type { SentenceReport } from './sentence-survey-report.ts';

/** One instance or kind of one message from one sender. */
export interface SentPart {
  /** data instance as sent, 0 to 255 */
  readonly instance?: number;
  /** tank contents, wind or direction reference, temperature source, as the message numbers them */
  readonly kind?: number;
  readonly messages: number;
  /** messages whose main field holds no data */
  readonly empty: number;
  /** what the last message with data said, by field, in the units of the database; only of messages told to people */
  readonly last?: FieldValues;
  readonly medianMs?: number;
  readonly meanMs?: number;
}

/** One message from one sender. */
export interface SentMessage {
  readonly pgn: number;
  /** whole messages; a fast packet counts once */
  readonly messages: number;
  /** over all its instances; absent without time or with fewer than two messages */
  readonly medianMs?: number;
  readonly meanMs?: number;
  readonly parts: readonly SentPart[];
}

/** One sender of the bus: a NAME, or an address that showed none. */
export interface SurveySender {
  /** address held last; absent for a NAME that lost its own or could claim none */
  readonly address?: number;
  /** every address it sent from, in order of use */
  readonly addresses: readonly number[];
  readonly name?: DeviceName;
  readonly claims: number;
  readonly frames: number;
  /** what it says of itself; texts in it are the maker's and are not for showing */
  readonly product?: ProductInformation;
  readonly sends: readonly SentMessage[];
}

/** One data instance that several senders use at once. */
export interface SharedInstance {
  readonly pgn: number;
  readonly instance: number;
  readonly kind?: number;
  readonly addresses: readonly number[];
}

/** Load of the bus, % of 250 kbit/s. */
export interface SurveyLoad {
  readonly exactPct: number;
  readonly worstPct: number;
  readonly busiest: {
    /** seconds since the first frame, whole */
    readonly second: number;
    readonly frames: number;
    readonly exactPct: number;
    readonly worstPct: number;
  };
}

/** Everything found in a recording. */
export interface SurveyReport {
  readonly frames: number;
  /** messages the recorder had joined already; with any of them the load is not known */
  readonly joined: number;
  /** of the frames: with 11-bit identifier, faults noted by the recorder, remote */
  readonly shortFrames: number;
  readonly errorFrames: number;
  readonly remoteFrames: number;
  /** lines or records that are no frame, over all recordings read */
  readonly broken: number;
  /** the first of them */
  readonly brokenAt: readonly BrokenPlace[];
  readonly cutShort: boolean;
  /** bits on the wire of all frames but faults */
  readonly bits: { readonly exact: number; readonly unstuffed: number; readonly worst: number };
  /** absent when the recording tells no time */
  readonly time?: {
    readonly durationS: number;
    readonly longestSilenceS: number;
    readonly clockSteps: readonly ClockStep[];
  };
  /** absent without time */
  readonly load?: SurveyLoad;
  readonly messages: number;
  /** by message number, ascending */
  readonly byPgn: readonly { readonly pgn: number; readonly frames: number; readonly messages: number }[];
  /** by address, ascending */
  readonly byAddress: readonly { readonly address: number; readonly frames: number }[];
  readonly fastPackets: FastPacketCounts;
  readonly claims: number;
  /** messages asked for (PGN 59904), by number */
  readonly requests: readonly { readonly pgn: number; readonly count: number }[];
  /** by address held last, then by NAME */
  readonly senders: readonly SurveySender[];
  readonly sharedInstances: readonly SharedInstance[];
  /** addresses that sent without a claim, ascending */
  readonly withoutClaim: readonly number[];
  /** LEN of all senders that told it, units of 50 mA */
  readonly lenSum: number;
  /** what was said in NMEA 0183 beside, or instead; absent where it was nothing */
  readonly sentences?: SentenceReport;
  /** messages left out of the senders' lists because a recording held more kinds than any bus */
  readonly leftOut: number;
}
