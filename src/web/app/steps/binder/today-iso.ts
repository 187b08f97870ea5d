const two = (value: number): string => String(value).padStart(2, '0');

/** The day it is here, as YYYY-MM-DD. */
export const todayIso = (now = new Date()): string =>
  `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
