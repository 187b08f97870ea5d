import { passageHours } from './buying.ts';
import { labour } from './labour.ts';
import type { SourceKey } from './sources.ts';

/** Tasks of a quote in the order they are done; each has its planning hours in `labour` or below. */
export const quoteTasks = [
  'survey',
  'remove-display',
  'remove-radar-mast-up',
  'remove-radar-mast-down',
  'cover-plate',
  'flush-mount',
  'fit-unit',
  'fit-aloft',
  'radar-mast',
  'transducer',
  'vhf',
  'pilot-sensors',
  'pilot-drive',
  'open-way',
  'widen-hole',
  'pull-10m',
  'pull-full',
  'mast-cable-down',
  'mast-cable-up',
  'backbone-10',
  'power-feed',
  'fit-plug',
  'commission',
  'sea-trial',
  'as-built',
] as const;
export type QuoteTask = (typeof quoteTasks)[number];

export interface TaskHours {
  readonly task: string;
  /** least and most hours of one */
  readonly professionalH: readonly [number, number];
  readonly ownerH: readonly [number, number];
  readonly source: SourceKey;
}

const alike = (hoursH: number): Pick<TaskHours, 'professionalH' | 'ownerH'> => ({
  professionalH: [hoursH, hoursH],
  ownerH: [hoursH, hoursH],
});

/** Hours of tasks that the usual table of labour has not. */
const otherTasks: Readonly<Record<string, TaskHours>> = {
  'fit-unit': {
    task: 'fit one box or sensor, bed it and plug it in',
    professionalH: [0.5, 1],
    ownerH: [1, 2],
    source: 'choice-quote-hours',
  },
  'fit-aloft': {
    task: 'fit one unit aloft',
    professionalH: [1, 2],
    ownerH: [2, 4],
    source: 'choice-quote-hours',
  },
  'fit-plug': {
    task: 'fit one plug to a cable aboard',
    ...alike(passageHours.fitPlug.value),
    source: passageHours.fitPlug.source,
  },
  'widen-hole': {
    task: 'bore one hole wider and seal it',
    ...alike(passageHours.boreHole.value),
    source: passageHours.boreHole.source,
  },
  'open-way': {
    task: 'open one way for its cables and close it again, hours as the boat file has them',
    ...alike(0),
    source: 'choice-quote-hours',
  },
};

const usual: ReadonlyMap<string, TaskHours> = new Map(labour.map(({ id, ...hours }) => [id, hours]));

/** The planning hours of one task. */
export const hoursOfTask = (task: QuoteTask): TaskHours => {
  const found = usual.get(task) ?? otherTasks[task];
  if (found === undefined) throw new Error(`no hours of ${task}`);
  return found;
};

/** What a quote for the electronics of a boat usually leaves out, and how long it holds. */
export const quoteHabits = {
  source: 'practice-quote',
  validDays: 30,
  exclusions: [
    { id: 'mains', says: 'Work on mains voltage, aboard or ashore.' },
    { id: 'rig', says: 'Unstepping or stepping a mast, a crane, and work on the rig.' },
    { id: 'haul-out', says: 'Hauling out, launching, berth and yard fees.' },
    { id: 'structure', says: 'Structural work, joinery and painting beyond the mounts and cover plates listed.' },
    { id: 'old-faults', says: 'Mending faults of what stays aboard: old wiring, batteries, engines, steering.' },
    { id: 'licences', says: 'Radio licences, call signs and identity numbers, and surveys for flag or insurance.' },
    { id: 'subscriptions', says: 'Charts, airtime and subscriptions.' },
  ],
} as const;

export const exclusionIds = quoteHabits.exclusions.map(({ id }) => id);
export type ExclusionId = (typeof exclusionIds)[number];
