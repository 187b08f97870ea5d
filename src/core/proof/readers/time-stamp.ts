import { byteOf, hexAt, none, skipBlanks } from './line-bytes.ts';

/** What a stamp is read into: microseconds since 1970, or none. */
export interface Stamped {
  timeUs: number | undefined;
}

const microsecondsInSecond = 1_000_000;
const secondsInDay = 86_400;
/** Beyond the year 2255 a count of seconds is one of milliseconds, and microseconds would be no exact number. */
const lastYear = 2254;
const largestSeconds = 9e9;
const largestMilliseconds = 9e12;

/** A whole number of so many digits at a position; `none` where another byte stands among them. */
const digitsAt = (bytes: Uint8Array, from: number, count: number): number => {
  let value = 0;
  for (let at = from; at < from + count; at += 1) {
    const digit = hexAt(bytes, at);
    if (digit > 9) return none;
    value = value * 10 + digit;
  }
  return value;
};

const endOfDigits = (bytes: Uint8Array, from: number): number => {
  let at = from;
  while (hexAt(bytes, at) < 10) at += 1;
  return at;
};

/** Microseconds of the digits behind a decimal point; what is finer is cut off. */
const fractionUs = (bytes: Uint8Array, from: number, end: number): number => {
  let value = 0;
  for (let place = 0; place < 6; place += 1) value = value * 10 + (from + place < end ? hexAt(bytes, from + place) : 0);
  return value;
};

/** `seconds.fraction` since 1970, or milliseconds, of as many digits as there are. Returns the position behind it. */
export const readSeconds = (bytes: Uint8Array, from: number, into: Stamped): number => {
  const end = endOfDigits(bytes, from);
  if (end === from || end - from > 13) return none;
  const whole = digitsAt(bytes, from, end - from);
  const behind = bytes[end] === byteOf.point ? endOfDigits(bytes, end + 1) : end;
  if (whole > largestSeconds) {
    if (whole > largestMilliseconds) return none;
    into.timeUs = whole * 1000;
  } else into.timeUs = whole * microsecondsInSecond + fractionUs(bytes, end + 1, behind);
  return behind;
};

/** Days from 1970 to a day of our calendar, by whole numbers only. */
const daysSince1970 = (year: number, month: number, day: number): number => {
  const fromMarch = (month + 9) % 12;
  const years = month < 3 ? year - 1 : year;
  const leaps = Math.floor(years / 4) - Math.floor(years / 100) + Math.floor(years / 400);
  return years * 365 + leaps + Math.floor((fromMarch * 153 + 2) / 5) + day - 1 - 719_468;
};

const readDay = (bytes: Uint8Array, from: number): number => {
  const year = digitsAt(bytes, from, 4);
  const month = digitsAt(bytes, from + 5, 2);
  const day = digitsAt(bytes, from + 8, 2);
  const isDay = year >= 1970 && year <= lastYear && month >= 1 && month <= 12 && day >= 1 && day <= 31;
  const isDashed = bytes[from + 4] === byteOf.hyphen && bytes[from + 7] === byteOf.hyphen;
  return isDay && isDashed ? daysSince1970(year, month, day) : none;
};

const readClock = (bytes: Uint8Array, from: number): number => {
  const hour = digitsAt(bytes, from, 2);
  const minute = digitsAt(bytes, from + 3, 2);
  const second = digitsAt(bytes, from + 6, 2);
  // 60 is the leap second.
  const isClock = hour >= 0 && hour < 24 && minute >= 0 && minute < 60 && second >= 0 && second <= 60;
  const isParted = bytes[from + 2] === byteOf.colon && bytes[from + 5] === byteOf.colon;
  return isClock && isParted ? hour * 3600 + minute * 60 + second : none;
};

const plus = 43;

/** `Z`, `+02:00`, `-0330` or nothing, which is taken for universal time. */
const readZone = (bytes: Uint8Array, from: number, into: Stamped): number => {
  if (bytes[from] === byteOf.capitalZ) return from + 1;
  if (bytes[from] !== plus && bytes[from] !== byteOf.hyphen) return from;
  const minutesAt = bytes[from + 3] === byteOf.colon ? from + 4 : from + 3;
  const hours = digitsAt(bytes, from + 1, 2);
  const minutes = digitsAt(bytes, minutesAt, 2);
  if (hours < 0 || minutes < 0) return from;
  const aheadUs = (hours * 3600 + minutes * 60) * microsecondsInSecond;
  into.timeUs = (into.timeUs ?? 0) + (bytes[from] === plus ? -aheadUs : aheadUs);
  return minutesAt + 2;
};

/** `2026-05-01T12:34:56.789Z`; a hyphen or a space may part day and clock, the fraction may be absent or of any length. */
export const readDate = (bytes: Uint8Array, from: number, into: Stamped): number => {
  const parting = bytes[from + 10];
  if (parting !== byteOf.capitalT && parting !== byteOf.hyphen && parting !== byteOf.space) return none;
  const day = readDay(bytes, from);
  const clock = day === none ? none : readClock(bytes, from + 11);
  if (clock === none) return none;
  const end = from + 19;
  const behind = bytes[end] === byteOf.point ? endOfDigits(bytes, end + 1) : end;
  into.timeUs = (day * secondsInDay + clock) * microsecondsInSecond + fractionUs(bytes, end + 1, behind);
  return readZone(bytes, behind, into);
};

/** A stamp in any of its forms: a date with a clock, or seconds since 1970. Returns the position behind it, or `none`. */
export const readStamp = (bytes: Uint8Array, from: number, into: Stamped): number => {
  const behindDate = readDate(bytes, from, into);
  return behindDate === none ? readSeconds(bytes, from, into) : behindDate;
};

/** A stamp in round brackets and the blanks behind it, from the bracket on. */
export const readBracketedTime = (bytes: Uint8Array, from: number, into: Stamped): number => {
  const behindSeconds = readSeconds(bytes, from + 1, into);
  const at =
    behindSeconds !== none && bytes[behindSeconds] === byteOf.closeRound
      ? behindSeconds
      : readDate(bytes, from + 1, into);
  return at === none || bytes[at] !== byteOf.closeRound ? none : skipBlanks(bytes, at + 1);
};
