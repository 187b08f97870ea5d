import type { BoatIndex } from '../../boat/boat-index.ts';
import { byCodeUnit } from '../../boat/ids.ts';
import { seaTrials, type TrialTest } from '../../facts/trial-tests.ts';
import type { BoatLog } from '../../log/boat-log.ts';

/**
 * How a trial stands: done; to be done again, as one it builds on was done later; tried and not as it should be; ready; or
 * waiting for those in `waitsFor`.
 */
export type TrialState = 'done' | 'again' | 'not-right' | 'ready' | 'waits';

export interface TrialStep {
  readonly trial: TrialTest;
  readonly state: TrialState;
  readonly waitsFor: readonly string[];
  /** units it is tried with */
  readonly units: readonly string[];
  /** the day it was done, and who wrote it down, where that is known */
  readonly on?: string;
  readonly by?: string;
  /** the calculator of the step Fit that writes its result into the settings */
  readonly calculator?: 'swing' | 'lead' | 'log' | 'wind';
}

/** The id under which the log keeps what came out of a trial at sea. */
export const trialId = (trial: string): string => `trial/${trial}`;

interface Done {
  readonly on: string;
  readonly by?: string;
  readonly isRight: boolean;
}

const later = (one: Done, other: Done): Done => (byCodeUnit(other.on, one.on) > 0 ? other : one);
const latest = (done: readonly Done[]): Done | undefined =>
  done.reduce<Done | undefined>((one, other) => (one === undefined ? other : later(one, other)), undefined);

interface Measured {
  readonly on: string;
  readonly by?: string;
  readonly unit: string;
}

const calculators = { heading: 'swing', compass: 'swing', depth: 'lead', log: 'log', wind: 'wind' } as const;
const isCalculated = (id: string): id is keyof typeof calculators => Object.hasOwn(calculators, id);

/** What was measured at sea for a trial, with its calculator. */
const measuredFor = ({ boat: { sea } }: BoatIndex, id: string, units: ReadonlySet<string>): readonly Measured[] => {
  if (!isCalculated(id)) return [];
  switch (calculators[id]) {
    case 'swing': {
      // a card for each compass: one that was not swung leaves the trial open
      const own = (sea?.swings ?? []).filter(({ unit }) => units.has(unit));
      return [...units].every((unit) => own.some((swing) => swing.unit === unit)) ? own : [];
    }
    case 'lead':
      return sea?.leads ?? [];
    case 'log':
      return sea?.logs ?? [];
    case 'wind':
      return sea?.winds ?? [];
  }
};

const doneOf = (index: BoatIndex, log: BoatLog, { id }: TrialTest, units: readonly string[]): Done | undefined => {
  const noted = log.readings.get(trialId(id));
  const told =
    noted === undefined
      ? []
      : [
          {
            on: noted.at.slice(0, 10),
            isRight: noted.right === true,
            ...(noted.by === undefined ? {} : { by: noted.by }),
          },
        ];
  const measured = measuredFor(index, id, new Set(units)).map(({ on, by }) => ({
    on,
    isRight: true,
    ...(by === undefined ? {} : { by }),
  }));
  return latest([...measured, ...told]);
};

const unitsFor = (index: BoatIndex, { kinds }: TrialTest): string[] =>
  index.boat.kit
    .filter(({ id, fate }) => fate !== 'goes' && kinds?.includes(index.sheetOf.get(id)?.kind ?? '') === true)
    .map(({ id }) => id)
    .sort(byCodeUnit);

const stateOf = (done: Done | undefined, before: readonly (Done | undefined)[], waits: boolean): TrialState => {
  if (done === undefined) return waits ? 'waits' : 'ready';
  if (!done.isRight) return 'not-right';
  return before.some((one) => one !== undefined && byCodeUnit(one.on, done.on) > 0) ? 'again' : 'done';
};

/**
 * The trials at sea of one boat in the order in which each feeds the next, with how each stands: by what the calculators wrote
 * into the boat file and by what the log says. A trial of what is not aboard is left out, and nothing waits for it. Pure.
 */
export const seaTrial = (index: BoatIndex, log: BoatLog): TrialStep[] => {
  const own = seaTrials.flatMap((trial) => {
    const units = unitsFor(index, trial);
    return trial.kinds !== undefined && units.length === 0 ? [] : [{ trial, units }];
  });
  const doneBy = new Map(own.map(({ trial, units }) => [trial.id, doneOf(index, log, trial, units)]));
  return own.map(({ trial, units }): TrialStep => {
    const needs = (trial.needs ?? []).filter((id) => doneBy.has(id));
    const waitsFor = needs.filter((id) => doneBy.get(id)?.isRight !== true);
    const done = doneBy.get(trial.id);
    const state = stateOf(
      done,
      needs.map((id) => doneBy.get(id)),
      waitsFor.length > 0,
    );
    return {
      trial,
      state,
      waitsFor: state === 'waits' ? waitsFor : [],
      units,
      ...(done === undefined ? {} : { on: done.on, ...(done.by === undefined ? {} : { by: done.by }) }),
      ...(isCalculated(trial.id) ? { calculator: calculators[trial.id] } : {}),
    };
  });
};
