import type { Way } from '../boat-schema.ts';
import { lengthMm, type Measure } from '../measure.ts';

/** The first of a list of words that either way is called: what is wetter, harder to pass, less known stands for both. */
const firstOf = <Word extends string>(order: readonly Word[], one: Word, other: Word): Word =>
  order.find((word) => word === one || word === other) ?? one;

const kinds = ['mast', 'gland', 'conduit', 'tray', 'open'] as const;
const sureness = ['assumed', 'seen', 'pulled'] as const;
const hows = ['guessed', 'papers', 'taped'] as const;
const barriers = ['fire', 'watertight', 'deck', 'plain'] as const;
const wetness = ['bilge', 'weather', 'spray', 'engine', 'damp', 'dry'] as const;

const sum = (one: number, other: number): number => Number((one + other).toFixed(9));

const sumLength = (one: Measure, other: Measure): Measure => {
  const how = firstOf(hows, one.how, other.how);
  const valueM = sum(one.valueM, other.valueM);
  const isUsual = [one, other].every(({ lessM, moreM }) => lessM === undefined && moreM === undefined);
  // doubt that nobody entered goes by how a length is known, as before
  if (isUsual && one.how === other.how) return { valueM, how };
  const doubt = (measure: Measure) => {
    const mm = lengthMm(measure);
    return {
      lessM: measure.lessM ?? (mm.nominalMm - mm.shortestMm) / 1000,
      moreM: measure.moreM ?? (mm.longestMm - mm.nominalMm) / 1000,
    };
  };
  const [first, second] = [doubt(one), doubt(other)];
  const asked = (key: 'lessM' | 'moreM') =>
    one.how === other.how && one[key] === undefined && other[key] === undefined
      ? {}
      : { [key]: sum(first[key], second[key]) };
  return { valueM, how, ...asked('lessM'), ...asked('moreM') };
};

const boreOf = (one: Way['bore'], other: Way['bore']): Way['bore'] => {
  if (one === undefined || other === undefined) return one ?? other;
  return other.mm < one.mm ? other : one;
};

const allowedBy = (one: Way['allows'], other: Way['allows']): Way['allows'] => {
  if (one === undefined || other === undefined) return one ?? other;
  return one.filter((kind) => other.includes(kind));
};

const wordOf = <Word extends string>(order: readonly Word[], one?: Word, other?: Word): Word | undefined =>
  one === undefined || other === undefined ? (one ?? other) : firstOf(order, one, other);

/** How often a trunk may use a way where nobody has said: once where a hole or a mast is narrow. */
const timesOf = ({ trunkTimes, kind }: Way): number => trunkTimes ?? (kind === 'mast' || kind === 'gland' ? 1 : 2);

const given = <Key extends keyof Way>(key: Key, value: Way[Key] | undefined): Partial<Way> =>
  value === undefined ? {} : { [key]: value };

/**
 * Two ways end to end as one between `ends`, under the id of the first: lengths, doubts and hours added up; of all else what
 * holds for both, the narrower bore, the wetter air, the lesser knowledge.
 */
export const asOneWay = (one: Way, other: Way, ends: Way['ends']): Way => {
  const near = [...new Set([...(one.near ?? []), ...(other.near ?? [])])];
  const hours =
    one.hours === undefined && other.hours === undefined ? undefined : sum(one.hours ?? 0, other.hours ?? 0);
  const times = Math.min(timesOf(one), timesOf(other)) === 2 ? 2 : 1;
  const isSaid = one.trunkTimes !== undefined || other.trunkTimes !== undefined;
  return {
    id: one.id,
    ends,
    length: sumLength(one.length, other.length),
    kind: firstOf(kinds, one.kind, other.kind),
    known: firstOf(sureness, one.known, other.known),
    ...given('bore', boreOf(one.bore, other.bore)),
    ...given('through', wordOf(barriers, one.through, other.through)),
    ...given('allows', allowedBy(one.allows, other.allows)),
    ...(isSaid ? { trunkTimes: times } : {}),
    ...given('hours', hours),
    ...given('exposure', wordOf(wetness, one.exposure, other.exposure)),
    ...(near.length === 0 ? {} : { near }),
    ...(one.counted === true && other.counted === true ? { counted: true } : {}),
  };
};
