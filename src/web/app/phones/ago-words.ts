import { words } from './words.ts';

const minuteMs = 60_000;
const hourMs = 3_600_000;
const dayMs = 86_400_000;

/** A day as it is written in lists, by the clock of this machine. */
export const dayWords = (atMs: number): string => {
  const at = new Date(atMs);
  const two = (number: number): string => String(number).padStart(2, '0');
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
};

/** How long ago something was, as finely as anybody wants to know. */
export const agoWords = (atMs: number, nowMs: number): string => {
  const agoMs = nowMs - atMs;
  if (agoMs < minuteMs) return words.now;
  if (agoMs < hourMs) return words.minutes(Math.floor(agoMs / minuteMs));
  return agoMs < dayMs ? words.hours(Math.floor(agoMs / hourMs)) : words.on(dayWords(atMs));
};
