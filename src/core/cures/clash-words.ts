import type { LimitShortfall } from '../backbone/limit-shortfall.ts';
import type { Problem } from '../backbone/problem.ts';
import type { BoatIndex } from '../boat/boat-index.ts';
import { splitDotted } from '../boat/ids.ts';
import { cableGrades } from '../facts/cable-grades.ts';
import { type LayoutLimit, layoutLimitWords } from '../facts/layout-limits.ts';
import { asSentence } from './candidate.ts';

/** A clash: its limits, with how far each is missed where that was found. */
export type Clash = readonly (Pick<LimitShortfall, 'limit'> & Partial<LimitShortfall>)[];

interface Told {
  readonly index: BoatIndex;
  readonly problem: Problem;
  /** whether the limits must be kept, or leave something in hand */
  readonly held: 'must' | 'warn';
}

const figure = (value: number, unit: string): string => `${value.toFixed(2)} ${unit}`;

/** Words with "and" before the last of them. */
const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;

const unitAt = (index: BoatIndex, [port]: readonly string[]): string => {
  const kit = port === undefined ? '' : splitDotted(port).kit;
  return index.kit.get(kit)?.name ?? kit;
};

const placesAt = (index: BoatIndex, places: readonly string[]): string =>
  listed(places.map((place) => index.places.get(place)?.name ?? place));

const loadWords = ({ devices }: Problem): string =>
  `with ${devices.length} ${devices.length === 1 ? 'unit' : 'units'} of ${devices.reduce((sum, { len }) => sum + len, 0)} LEN`;

type Wording = (told: Told, short: LimitShortfall, is: { readonly would: string; readonly allowed: string }) => string;

const wordings: Readonly<Record<LayoutLimit, Wording>> = {
  'device-count': ({ problem }, _, { allowed }) => `${problem.devices.length} units hang on it; ${allowed}`,
  'one-drop': ({ index }, { at }, { would, allowed }) =>
    `the drop to ${unitAt(index, at)} would be ${would}; ${allowed}`,
  'all-drops': (_, __, { would, allowed }) => `all drops together would be ${would}; ${allowed}`,
  length: (_, { grade }, { would, allowed }) =>
    `the farthest two points would be ${would} apart along ${cableGrades[grade].name} cable; ${allowed}`,
  current: ({ problem }, { grade }, { would, allowed }) =>
    `${loadWords(problem)} one leg of ${cableGrades[grade].name} cable would carry ${would}; ${allowed}`,
  volts: ({ index, problem }, { at, figure: lost }, { would, allowed }) =>
    lost !== undefined && lost.allowed < 0
      ? `the feed gives ${figure(problem.feed.mv / 1000, 'V')} with the bank at its lowest, less than ${unitAt(index, at)} needs`
      : `${loadWords(problem)} ${would} would be lost on the way to ${unitAt(index, at)}; ${allowed}`,
  'tee-places': ({ index }, { at }) => `a tee would have to stand at ${placesAt(index, at)}, where none may`,
  'end-places': ({ index }, { at }) =>
    `the trunk would have to end at ${placesAt(index, at)}, where its terminator cannot be reached`,
};

const missedWords = (told: Told, clash: Clash): string[] =>
  clash.flatMap(({ limit, grade, at, figure: missed }) => {
    if (grade === undefined || at === undefined) return [];
    if (missed === undefined && at.length === 0) return [];
    const { would = 0, allowed = 0, unit = '' } = missed ?? {};
    const most = unit === 'units' ? String(allowed) : figure(allowed, unit);
    const short = { limit, grade, at, ...(missed === undefined ? {} : { figure: missed }) };
    return [
      wordings[limit](told, short, {
        would: figure(would, unit),
        allowed: `${most} is ${told.held === 'must' ? 'the most' : 'what one should keep to'}`,
      }),
    ];
  });

const clashWords = (told: Told, clash: Clash): string => {
  const limits = clash.map(({ limit }) => layoutLimitWords[limit]);
  const missed = missedWords(told, clash);
  const isOne = clash.length === 1;
  const what = isOne ? `In the way: ${limits.join('')}.` : `These cannot all be kept: ${listed(limits)}.`;
  if (missed.length === 0) return what;
  return `${what} ${asSentence(`${isOne ? '' : 'else '}${missed.join(', or ')}`)}`;
};

/** What keeps a bus from a layout, in words with numbers: each clash a sentence or two. */
export const clashesInWords = (told: Told, clashes: readonly Clash[]): string =>
  clashes.map((clash) => clashWords(told, clash)).join(' Apart from that: ');

/** Where no limit is to blame: units no way leads to, or no feed. */
export const strandedInWords = ({ index, problem }: Told, stranded: readonly string[]): string => {
  if (problem.feed.reach.length === 0) return 'No lead from a panel reaches any place where its feed could stand.';
  if (stranded.length === 0) return '';
  const units = [...new Set(stranded.map((port) => unitAt(index, [port])))];
  return `No way that takes its cable leads to ${listed(units)}.`;
};
