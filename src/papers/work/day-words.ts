import type { CalendarDay, PhaseWork } from '../../core/work-shape.ts';

const weekdays = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'] as const;
const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;

const dayMs = 86_400_000;

/** A day of the calendar in words. */
export const dateWords = (date: string): string => {
  const on = new Date(`${date}T00:00:00Z`);
  return `${weekdays[on.getUTCDay()]} ${on.getUTCDate()} ${months[on.getUTCMonth()]}`;
};

/** The day so many days after another. */
export const dateAfter = (date: string, days: number): string =>
  new Date(Date.parse(`${date}T00:00:00Z`) + days * dayMs).toISOString().slice(0, 10);

/** A day of the work as it is called: by its date, else counted from the first. */
export const dayWords = ({ day, date }: Pick<CalendarDay, 'day' | 'date'>): string =>
  date === undefined ? `day ${day + 1}` : dateWords(date);

/** A day of a phase by its number, also where the calendar does not reach so far. */
export const dayOfPhase = ({ days }: Pick<PhaseWork, 'days'>, day: number): string => {
  const first = days[0]?.date;
  return dayWords(days[day] ?? { day, ...(first === undefined ? {} : { date: dateAfter(first, day) }) });
};

/** An hour of the clock: the half hour `slot` of a day of work that begins `from` half hours after midnight. */
export const clockWords = (from: number, slot: number): string => {
  const halves = (((from + slot) % 48) + 48) % 48;
  return `${String(Math.floor(halves / 2)).padStart(2, '0')}:${halves % 2 === 0 ? '00' : '30'}`;
};

/** Hours without needless digits. */
export const hoursWords = (hoursH: number): string => `${Number(hoursH.toFixed(1))} h`;
