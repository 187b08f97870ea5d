import type { Boat } from '../boat/boat-schema.ts';
import type { StandardDay } from '../boat/own-day.ts';
import { type DayPart, type Duty, dayParts, dayRunHours } from '../facts/day-duty.ts';

/** Hours of a day in each of its parts; together 24. */
export type PartHours = Readonly<Record<DayPart, number>>;

const none: PartHours = { anchor: 0, sailing: 0, motoring: 0, alongside: 0 };
const wholeDay = 24;
const sails = new Set<Boat['hull']['kind']>(['sloop', 'ketch', 'catamaran']);

/**
 * What a standard day is made of. Under way by day is ten hours and the rest at anchor, by night the whole 24 hours; a boat
 * with sails is taken to sail them.
 */
export const partHours = (day: StandardDay, hull: Boat['hull']['kind']): PartHours => {
  const run: DayPart = sails.has(hull) ? 'sailing' : 'motoring';
  switch (day) {
    case 'anchor':
      return { ...none, anchor: wholeDay };
    case 'under-way-day':
      return { ...none, [run]: dayRunHours.value, anchor: wholeDay - dayRunHours.value };
    case 'under-way-night':
      return { ...none, [run]: wholeDay };
    case 'alongside':
      return { ...none, alongside: wholeDay };
  }
};

/** Which end of a range of hours, or what is reckoned with: the middle, or the most where a duty says so. */
export type Reckoned = 'least' | 'usual' | 'most';

const shareOf = ({ usual }: Duty, [least, most]: readonly [number, number], reckoned: Reckoned): number => {
  if (reckoned === 'least') return least;
  if (reckoned === 'most' || usual === 'most') return most;
  return (least + most) / 2;
};

/** Hours something runs in a day, and those of them in which nothing charges. */
export interface RunHours {
  readonly hours: number;
  readonly fromBankHours: number;
}

/** How a day goes for one bank: its parts, those in which nothing charges it, and which end of the hours is reckoned with. */
export interface DayGoes {
  readonly parts: PartHours;
  readonly uncharged: readonly DayPart[];
  readonly reckoned: Reckoned;
}

/**
 * Hours that something of this duty runs: the sum over the parts of the day of hours x share.
 *
 * @example hoursOf(duties.ais, { parts: partHours('anchor', 'sloop'), uncharged: ['anchor'], reckoned: 'usual' }).hours // 24
 */
export const hoursOf = (duty: Duty, { parts, uncharged, reckoned }: DayGoes): RunHours => {
  const inPart = (part: DayPart): number => parts[part] * shareOf(duty, duty[part], reckoned);
  const sum = (some: readonly DayPart[]): number => some.reduce((hours, part) => hours + inPart(part), 0);
  return { hours: sum(dayParts), fromBankHours: sum(uncharged) };
};

/** Hours of a day in these parts. */
export const hoursIn = (parts: PartHours, some: readonly DayPart[]): number =>
  some.reduce((hours, part) => hours + parts[part], 0);
