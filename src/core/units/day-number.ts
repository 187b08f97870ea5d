/**
 * Days from 1970-01-01 to a day written year-month-day, by the Gregorian calendar.
 *
 * @example dayNumber('1970-02-01') is 31
 */
export const dayNumber = (day: string): number => {
  const [year = 1970, month = 1, date = 1] = day.split('-').map(Number);
  // Years are counted from March, so that the odd day of a leap year comes last.
  const from = month > 2 ? year : year - 1;
  const era = Math.floor(from / 400);
  const ofEra = from - era * 400;
  const ofYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + date - 1;
  return era * 146_097 + ofEra * 365 + Math.floor(ofEra / 4) - Math.floor(ofEra / 100) + ofYear - 719_468;
};

/** The day of the week of a day, Monday as 0. */
export const weekdayOf = (day: string): number => (((dayNumber(day) + 3) % 7) + 7) % 7;
