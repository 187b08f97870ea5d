import type { BrokenPlace } from '../readers/recording-reader-shape.ts';
import { senderKind } from './sender-words.ts';
import type { SurveyReport } from './survey-report.ts';
import { sendsWords } from './survey-words.ts';

/** One unit that spoke on the bus, in words that may be shown: no serial, no maker’s text, no number of a ship. */
export interface HeardUnit {
  /** from 1, as in the drafted boat */
  readonly number: number;
  readonly what: string;
  readonly sends: string;
  /** known by its address only, because it claimed none while the recorder listened */
  readonly unclaimed: boolean;
}

/** A recording as it is shown before anything is made of it. */
export interface Heard {
  readonly frames: number;
  /** messages the recorder had joined, whose frames are not known */
  readonly joined: number;
  /** absent when the recording tells no time */
  readonly durationS?: number;
  readonly broken: number;
  /** where the first of them stand */
  readonly brokenAt: readonly BrokenPlace[];
  readonly units: readonly HeardUnit[];
}

const mostPlaces = 5;

/** What a recording holds, fit to be shown. */
export const heardIn = (report: SurveyReport): Heard => ({
  frames: report.frames,
  joined: report.joined,
  ...(report.time === undefined ? {} : { durationS: report.time.durationS }),
  broken: report.broken,
  brokenAt: report.brokenAt.slice(0, mostPlaces),
  units: report.senders
    .map((sender, at) => ({ sender, number: at + 1 }))
    .filter(({ sender }) => sender.name !== undefined || sender.address !== undefined)
    .map(({ sender, number }) => ({
      number,
      what: senderKind(sender).words,
      sends: sendsWords(sender),
      unclaimed: sender.name === undefined,
    })),
});
