import { UserError } from '../core/boat/user-error.ts';

const isDay = (text: string): boolean =>
  /^\d{4}-\d{2}-\d{2}$/.test(text) &&
  !Number.isNaN(Date.parse(`${text}T00:00:00Z`)) &&
  new Date(`${text}T00:00:00Z`).toJSON().startsWith(text);

/**
 * A day of the calendar typed behind an option.
 *
 * @throws UserError when there is no such day
 */
export const typedDay = (text: string, option: string): string => {
  if (isDay(text)) return text;
  throw new UserError({
    says: `“${text}” is no day.`,
    whatToDo: `Write ${option} with year, month and day, like 2026-11-26.`,
  });
};
