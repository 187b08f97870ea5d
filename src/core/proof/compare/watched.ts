import type { ReaderCounts } from '../readers/recording-reader-shape.ts';
import type { Sender } from '../survey/sender-book.ts';
import type { SurveyReport, SurveySender } from '../survey/survey-report.ts';
import type { Claim } from './claim-book.ts';
import type { Echo } from './echo-book.ts';
import type { Evidence } from './evidence-book.ts';
import type { LineBook } from './line-book.ts';
import type { ValueBook } from './value-book.ts';

/** Where a value comes from: a sender of the bus, or the line of sentences. */
export type ValueFrom = Sender | 'line';

/** What was taken from a bus. */
export interface WatchedBus {
  readonly kind: 'bus';
  /** the bus it is, where somebody said so */
  readonly told?: string;
  readonly survey: SurveyReport;
  readonly evidence: readonly Evidence[];
  readonly claims: readonly Claim[];
  /** requests for claims */
  readonly asked: number;
  readonly echoes: readonly Echo<Sender>[];
}

/** What was taken from a 0183 line. */
export interface WatchedLine {
  readonly kind: 'line';
  /** the talker it is, `kit.port`, where somebody said so */
  readonly told?: string;
  readonly line: LineBook;
  readonly echoes: readonly Echo<string>[];
}

/** All that one watch has taken, ready to be held against a plan. */
export interface Watched {
  readonly wires: readonly (WatchedBus | WatchedLine)[];
  readonly values: ValueBook<ValueFrom>;
  /** what the readers of recordings counted beside */
  readonly read: readonly ReaderCounts[];
}

type Known = Pick<SurveySender, 'addresses'> & { readonly name?: { readonly hex: string } | undefined };

/** What a sender is known by, in the survey’s own books and in its report alike. */
export const senderKey = ({ name, addresses }: Known): string => name?.hex ?? `at ${addresses.join(' ')}`;
