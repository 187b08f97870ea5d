import { leavingSteps } from '../../core/facts/leaving-steps.ts';
import type { BoatLog } from '../../core/log/boat-log.ts';
import { isTicked, jobTickId, leavingTickId } from '../../core/work/ticks.ts';
import type { LeavingEntry } from '../../core/work-shape.ts';
import { thingName, type WorkNames } from './work-names.ts';

/** One thing to do with a unit before it leaves. */
export interface LeavingStepRow {
  readonly id: string;
  readonly tick: string;
  readonly says: string;
  readonly isDone: boolean;
}

/** One unit that goes, with what is to be done before it does. */
export interface LeavingRow {
  readonly unit: string;
  readonly name: string;
  readonly to?: LeavingEntry['to'];
  readonly fate: string;
  readonly kept: string;
  readonly steps: readonly LeavingStepRow[];
  /** whether the trial it is kept for is done, so that it may go */
  readonly mayGo: boolean;
}

export const fateWords = { sell: 'to be sold', spare: 'kept as a spare', recycle: 'to be recycled' } as const;

const stepSays = (id: string, isByMaker: boolean): string => {
  const does = leavingSteps.find((step) => step.id === id)?.does ?? id.replaceAll('-', ' ');
  return isByMaker ? `${does}: only its maker or a dealer can` : does;
};

const keptWords = (names: WorkNames, { cables, serial, photo }: LeavingEntry): string =>
  [
    photo ? 'photographed' : 'not photographed yet',
    serial ? 'serial number noted' : 'serial number not noted yet',
    cables.length === 0
      ? 'no cable kept with it'
      : `kept with it: ${cables.map((id) => thingName(names, id)).join(', ')}`,
  ].join('; ');

/** The units that go, each with what is done before it leaves and whether it may. */
export const leavingRows = (
  names: WorkNames,
  leaving: readonly LeavingEntry[],
  log: Pick<BoatLog, 'ticks'>,
): LeavingRow[] =>
  leaving.map((entry) => ({
    unit: entry.unit,
    name: thingName(names, entry.unit),
    ...(entry.to === undefined ? {} : { to: entry.to }),
    fate: entry.to === undefined ? 'nobody said where it goes' : fateWords[entry.to],
    kept: keptWords(names, entry),
    steps: entry.steps.map((id) => {
      const tick = leavingTickId(entry.unit, id);
      return { id, tick, says: stepSays(id, entry.byMaker.includes(id)), isDone: isTicked(log, tick) };
    }),
    mayGo: isTicked(log, jobTickId(entry.after)),
  }));
