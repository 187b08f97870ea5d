import { keptFor } from '../../boat/kept-for.ts';
import { faultSignatures } from '../../facts/dock-tests.ts';
import type { BusModel } from './bus-model.ts';
import { faultCases } from './fault-cases.ts';
import {
  type FeedVolts,
  likelihood,
  onScale,
  type ReadingRange,
  type ScaledRange,
  scaledRange,
} from './reading-range.ts';
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

/** One reading on its scale, and how likely a sound bus makes it. */
interface PlacedReading {
  readonly x: number;
  readonly sound: number;
}
type Placed = ReadonlyMap<ReadingKey, PlacedReading>;

const placedOf = (sound: KnownCase['scaled'], readings: BusReadings, feed: FeedVolts): Placed => {
  const placed = new Map<ReadingKey, PlacedReading>();
  for (const [key, range] of sound) {
    const value = readings.get(key);
    if (value === undefined) continue;
    const x = onScale(range.scale, value);
    placed.set(key, { x, sound: likelihood(range, x, feed) });
  }
  return placed;
};

/** How many times likelier than a sound bus a case makes all readings together. */
const gainOf = ({ scaled }: KnownCase, placed: Placed, feed: FeedVolts): number => {
  let gain = 1;
  for (const [key, range] of scaled) {
    const reading = placed.get(key);
    if (reading !== undefined) gain *= likelihood(range, reading.x, feed) / reading.sound;
  }
  return gain;
};

/** A reading speaks where it makes a cause so many times likelier, or so many times less. */
const clear = 3;

/** The readings that a case makes clearly likelier than a sound bus does, and those it makes less likely, clearest first. */
const spoken = ({ scaled }: KnownCase, placed: Placed, feed: FeedVolts): Pick<Cause, 'speaks' | 'against'> => {
  const gains = [...scaled].flatMap(([key, range]) => {
    const reading = placed.get(key);
    return reading === undefined ? [] : [{ key, gain: likelihood(range, reading.x, feed) / reading.sound }];
  });
  const speaks = gains.filter(({ gain }) => gain > clear).sort((one, other) => other.gain - one.gain);
  const against = gains.filter(({ gain }) => gain < 1 / clear).sort((one, other) => one.gain - other.gain);
  return { speaks: speaks.map(({ key }) => key), against: against.map(({ key }) => key) };
};

interface Weighed {
  readonly fault: string;
  /** mean over its cases, beside a sound bus */
  readonly weight: number;
  readonly best: KnownCase;
}

const weighed = (fault: string, cases: readonly KnownCase[], placed: Placed, feed: FeedVolts): Weighed[] => {
  let [best] = cases;
  let most = 0;
  let sum = 0;
  for (const one of cases) {
    const gain = gainOf(one, placed, feed);
    sum += gain;
    if (gain <= most) continue;
    most = gain;
    best = one;
  }
  return best === undefined ? [] : [{ fault, weight: sum / cases.length, best }];
};

/**
 * What is wrong with a bus, likeliest first, from what was read so far: P(c | x) ~ mean over the ways h in which c can be of the
 * product over readings of p(x_i | h), every cause as likely as another before anything is read. Readings may be few. Pure.
 */
export const diagnose = (model: BusModel, readings: BusReadings): Cause[] => {
  const feed = feedVolts(readings);
  const { sound, soundScaled, faults } = knownOf(model);
  const placed = placedOf(soundScaled, readings, feed);
  const all = faults
    .flatMap(({ fault, cases }) => weighed(fault, cases, placed, feed))
    .sort((one, other) => other.weight - one.weight);
  const sum = all.reduce((part, { weight }) => part + weight, 0);
  const likeliest = all.find(({ fault }) => fault !== 'ok');
  const turned = ({ speaks, against }: Pick<Cause, 'speaks' | 'against'>) => ({ speaks: against, against: speaks });
  return all.map(({ fault, weight, best }) => ({
    fault,
    share: weight / sum,
    ...(best.step === undefined ? {} : { step: best.step }),
    ...(fault === 'ok' && likeliest !== undefined
      ? turned(spoken(likeliest.best, placed, feed))
      : spoken(best, placed, feed)),
    ranges: new Map([...sound, ...best.changes]),
  }));
};
