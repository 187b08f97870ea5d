import { keptFor } from '../../boat/kept-for.ts';
import { faultSignatures } from '../../facts/dock-tests.ts';
import type { BusModel } from './bus-model.ts';
import { faultCases } from './fault-cases.ts';
import { type FeedVolts, likelihood, type ReadingRange, type ScaledRange, scaledRange } from './reading-range.ts';
import { type ReadingKey, soundRanges, supplied } from './sound-ranges.ts';

/** What was read on one bus, by test and spot. */
export type BusReadings = ReadonlyMap<ReadingKey, number>;

/**
 * One cause, as likely as `share` of one. `step`: the step of the trunk it lies at where the readings fit best. `speaks` and
 * `against`: readings that fit it clearly better, or clearly worse, than a sound bus (a sound bus: than the likeliest fault).
 */
export interface Cause {
  readonly fault: string;
  readonly share: number;
  readonly step?: number;
  readonly speaks: readonly ReadingKey[];
  readonly against: readonly ReadingKey[];
  /** what every reading is where it fits best */
  readonly ranges: ReadonlyMap<ReadingKey, ReadingRange>;
}

type Changes = readonly (readonly [ReadingKey, ReadingRange])[];

interface KnownCase {
  readonly step?: number;
  readonly changes: Changes;
  readonly scaled: ReadonlyMap<ReadingKey, ScaledRange>;
}

const scaledOf = (changes: Changes): ReadonlyMap<ReadingKey, ScaledRange> =>
  new Map(changes.map(([key, range]) => [key, scaledRange(range)]));

/** All that can be wrong with one bus, case by case; kept for as long as somebody looks at it. */
const knownOf = keptFor((model: BusModel) => {
  const sound = soundRanges(model);
  const faults = faultSignatures.map(({ id }) => ({
    fault: id,
    cases: (faultCases[id]?.(model) ?? []).map((one): KnownCase => ({ ...one, scaled: scaledOf(one.changes) })),
  }));
  return { sound, soundScaled: scaledOf(sound), faults };
});

/** What volts are counted from: those read at the feed, or all that it may have. */
export const feedVolts = (readings: BusReadings): FeedVolts => {
  const readV = readings.get('bus-volts:feed');
  return readV === undefined ? supplied : { least: readV, most: readV };
};

type Logs = ReadonlyMap<ReadingKey, number>;

/** The readings as logarithms of how likely they are, of those that a case says something of. */
const logsOf = (
  ranges: ReadonlyMap<ReadingKey, ScaledRange>,
  readings: BusReadings,
  feed: FeedVolts,
): Map<ReadingKey, number> => {
  const logs = new Map<ReadingKey, number>();
  for (const [key, range] of ranges) {
    const value = readings.get(key);
    if (value !== undefined) logs.set(key, Math.log(likelihood(range, value, feed)));
  }
  return logs;
};

/** How much likelier a case makes the readings than a sound bus does, as a logarithm. */
const gainOf = ({ scaled }: KnownCase, readings: BusReadings, feed: FeedVolts, sound: Logs): number => {
  let gain = 0;
  for (const [key, range] of scaled) {
    const value = readings.get(key);
    if (value !== undefined) gain += Math.log(likelihood(range, value, feed)) - (sound.get(key) ?? 0);
  }
  return gain;
};

/** A reading speaks where it makes a cause three times likelier, or a third. */
const clear = Math.log(3);

const spoken = (own: Logs, sound: Logs, turn: 1 | -1): Pick<Cause, 'speaks' | 'against'> => {
  const ratios = [...own].map(([key, log]) => ({ key, by: turn * (log - (sound.get(key) ?? 0)) }));
  const told = (side: 1 | -1): ReadingKey[] =>
    ratios
      .filter(({ by }) => side * by > clear)
      .sort((one, other) => Math.abs(other.by) - Math.abs(one.by))
      .map(({ key }) => key);
  return { speaks: told(1), against: told(-1) };
};

interface Weighed {
  readonly fault: string;
  /** mean over its cases, beside a sound bus */
  readonly weight: number;
  readonly best: KnownCase;
  readonly logs: Logs;
}

const weigh = (model: BusModel, readings: BusReadings, feed: FeedVolts) => {
  const { sound, soundScaled, faults } = knownOf(model);
  const soundLogs = logsOf(soundScaled, readings, feed);
  const weighed = faults.flatMap(({ fault, cases }): Weighed[] => {
    const fits = cases.map((one) => ({ one, gain: gainOf(one, readings, feed, soundLogs) }));
    const [first] = fits;
    if (first === undefined) return [];
    const best = fits.reduce((one, other) => (other.gain > one.gain ? other : one), first);
    const weight = fits.reduce((sum, { gain }) => sum + Math.exp(gain), 0) / fits.length;
    return [{ fault, weight, best: best.one, logs: logsOf(best.one.scaled, readings, feed) }];
  });
  return { sound, soundLogs, weighed: weighed.sort((one, other) => other.weight - one.weight) };
};

/**
 * What is wrong with a bus, likeliest first, from what was read so far: P(c | x) ~ mean over the ways h in which c can be of the
 * product over readings of p(x_i | h), every cause as likely as another before anything is read. Readings may be few. Pure.
 */
export const diagnose = (model: BusModel, readings: BusReadings): Cause[] => {
  const feed = feedVolts(readings);
  const { sound, soundLogs, weighed } = weigh(model, readings, feed);
  const all = weighed.reduce((sum, { weight }) => sum + weight, 0);
  const likeliest = weighed.find(({ fault }) => fault !== 'ok')?.logs ?? new Map<ReadingKey, number>();
  return weighed.map(({ fault, weight, best: { step, changes }, logs }) => ({
    fault,
    share: weight / all,
    ...(step === undefined ? {} : { step }),
    ...(fault === 'ok' ? spoken(likeliest, soundLogs, -1) : spoken(logs, soundLogs, 1)),
    ranges: new Map([...sound, ...changes]),
  }));
};
