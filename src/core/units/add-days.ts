const daysInMonth = (year: number, month: number): number => {
  if (month === 2) return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
};

const padded = (value: number, digits: number): string => String(value).padStart(digits, '0');

/**
 * The day so many days after another, both as year-month-day.
 *
 * @example addDays('2027-02-20', 14) is '2027-03-06'
 */
export const addDays = (from: string, days: number): string => {
  let [year = 0, month = 1, day = 1] = from.split('-').map(Number);
  day += days;
  while (day > daysInMonth(year, month)) {
    day -= daysInMonth(year, month);
    month += 1;
    if (month > 12) [year, month] = [year + 1, 1];
  }
  return `${padded(year, 4)}-${padded(month, 2)}-${padded(day, 2)}`;
};
