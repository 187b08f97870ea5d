import type { SurveyReport, SurveySender } from '../survey/survey-report.ts';
import type { Evidence } from './evidence-book.ts';
import type { PlannedUnit, SenderMatches } from './match-senders.ts';
import type { Planned, PlannedSend } from './planned-sends.ts';
import type { ProofMessage, ProofReading, ProofStranger, ProofUnit, ProofWire } from './proof-report.ts';
import type { ValueBook } from './value-book.ts';
import type { ValueFrom, WatchedBus, WatchedLine } from './watched.ts';

/** One watched bus with everything found out about it. */
export interface SeenBus {
  readonly kind: 'bus';
  readonly id: string;
  readonly wire: ProofWire;
  readonly watched: WatchedBus;
  readonly survey: SurveyReport;
  readonly senders: readonly SurveySender[];
  readonly units: readonly PlannedUnit[];
  readonly sends: readonly PlannedSend[];
  readonly matches: SenderMatches;
  readonly values: ValueBook<ValueFrom>;
  /** the unit a sender was matched to */
  unitOf(sender: SurveySender): string | undefined;
  /** what can be shown of a message of one sender: of a part, or of any */
  evidenceOf(sender: SurveySender, pgn: number): readonly Evidence[];
}

/** One watched 0183 line with everything found out about it. */
export interface SeenLine {
  readonly kind: 'line';
  readonly id: string;
  readonly wire: ProofWire;
  readonly watched: WatchedLine;
  readonly sends: readonly PlannedSend[];
  readonly values: ValueBook<ValueFrom>;
}

/** Everything a check may look at. */
export interface Seen {
  readonly planned: Planned;
  readonly buses: readonly SeenBus[];
  readonly lines: readonly SeenLine[];
  readonly units: readonly ProofUnit[];
  readonly messages: readonly ProofMessage[];
  readonly readings: readonly ProofReading[];
  readonly strangers: readonly ProofStranger[];
}
