import type { DriveCheckId, DriveEntry } from '../../drives-shape.ts';
import type { LaidInput, Observation, Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

const missing = {
  'motor-volts': 'volts of the output',
  'output-kind': 'kind of the output',
  'run-current': 'current the output gives for long',
  'peak-current': 'current the output gives at its peak',
  'clutch-output': 'whether there is a clutch output',
  'clutch-volts': 'volts of the clutch',
  'clutch-current': 'current of the clutch',
  'rudder-kind': 'kind of the rudder sensor, or what the computer hears',
  'rudder-sensor': 'whether a rudder sensor is needed',
  'boat-weight': 'weight of the boat, or what the drive is rated for',
  'power-lost': 'whether the drive lets go without power',
  'bus-lost': 'whether the computer lets go without its bus',
  'leads-run': 'what feed and lead of the drive lose: their copper, a current or a route is missing',
  'leads-peak': 'what feed and lead of the drive lose: their copper, a current or a route is missing',
} as const satisfies Record<DriveCheckId, string>;

const unknownOf = ({ checks }: DriveEntry): string[] => [
  ...new Set(checks.filter(({ verdict }) => verdict === 'unknown').map(({ check }) => missing[check])),
];

const doubtOf = ({ index }: LaidInput, entry: DriveEntry, unknown: readonly string[]): Observation => {
  const drive = unitName(index, entry.drive);
  if (entry.computer === undefined && entry.checks.some(({ check }) => check === 'output-kind')) {
    return {
      about: [entry.drive],
      says: `No pilot computer is joined to ${drive}, so it is not known whether anything works it.`,
      cure: 'Join the drive to the output of its computer, or say that it goes.',
    };
  }
  const pair = entry.computer === undefined ? drive : `${unitName(index, entry.computer)} with ${drive}`;
  return {
    about: [entry.drive, ...(entry.computer === undefined ? [] : [entry.computer])],
    says: `${pair} could not be looked at in everything. Not known: ${unknown.join('; ')}.`,
    cure: 'Look it up on the plates and in the manuals, and enter it.',
  };
};

export const driveNotKnown: Rule = {
  id: 'steering/drive-not-known',
  level: 'doubt',
  title: 'What a pilot computer or its drive asks or gives is not known.',
  sources: ['practice-drive-match'],
  check: (input) =>
    input.plan.drives.flatMap((entry) => {
      const unknown = unknownOf(entry);
      return unknown.length === 0 ? [] : [doubtOf(input, entry, unknown)];
    }),
};
