import type { DriveCheck, DriveCheckId, DriveEntry } from '../../drives-shape.ts';
import type { LaidInput, Observation } from '../rule.ts';
import { sourceWords, unitName } from '../rule-words.ts';

/** A pair and the one check that went wrong. */
interface Wrong {
  readonly entry: DriveEntry;
  readonly check: DriveCheck;
  /** the drive as the owner calls it, and the computer, or the pilot that is one with its drive */
  readonly drive: string;
  readonly computer: string;
}

/** What tells two findings on one pair apart: a word, so that an id fits a line of the terminal. */
const apartBy: Partial<Record<DriveCheckId, string>> = {
  'run-current': 'run',
  'peak-current': 'peak',
  'clutch-output': 'output',
  'clutch-volts': 'volts',
  'clutch-current': 'current',
  'power-lost': 'power',
  'bus-lost': 'bus',
  'leads-run': 'run',
  'leads-peak': 'peak',
};

/** What is said of every pair in which one of some checks went so. */
export const eachCheck = (
  { index, plan }: LaidInput,
  ids: readonly DriveCheckId[],
  says: (wrong: Wrong) => Omit<Observation, 'about'>,
  verdict: DriveCheck['verdict'] = 'fails',
): Observation[] =>
  plan.drives.flatMap((entry) =>
    entry.checks
      .filter((check) => check.verdict === verdict && ids.includes(check.check))
      .map((check) => {
        const about = [entry.drive, ...(entry.computer === undefined ? [] : [entry.computer])];
        const wrong = {
          entry,
          check,
          drive: unitName(index, entry.drive),
          computer: unitName(index, entry.computer ?? entry.drive),
        };
        return { about, ...(ids.length > 1 ? { apart: [apartBy[check.check] ?? check.check] } : {}), ...says(wrong) };
      }),
  );

/** Asked and given of a check as the figures of a finding. */
export const asFigures = ({ asked, given, unit }: DriveCheck): Pick<Observation, 'measured' | 'limit'> =>
  asked === undefined || given === undefined || unit === undefined
    ? {}
    : {
        measured: { value: asked, unit },
        limit: { value: given, unit, source: sourceWords('practice-drive-match') },
      };
