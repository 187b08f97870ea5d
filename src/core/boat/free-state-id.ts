/** The last moment that four digits of a year can tell. */
const lastMs = Date.UTC(9999, 11, 31, 23, 59, 59, 999);

/** A date and time that is sorted as it is read: `2026-03-01-09-30-00-000`, universal time. */
export const datedId = (date: Date): string => date.toISOString().replace(/[T:.]/g, '-').replace('Z', '');

/** The moment by which a state is named. */
export const stateMs = (id: string): number => {
  const [year = 0, month = 1, day = 1, hour = 0, minute = 0, second = 0, ms = 0] = id.split(/[-.]/).map(Number);
  return Date.UTC(year, month - 1, day, hour, minute, second, ms);
};

/**
 * The name under which an earlier state of a boat is kept: when it was saved over, but always after all there are, so that
 * they stay in their order where a clock was set back.
 *
 * @example freeStateId([], new Date(0)) // '1970-01-01-00-00-00-000'
 */
export const freeStateId = (taken: readonly string[], date: Date): string => {
  const afterMs = taken.reduce((latest, id) => Math.max(latest, stateMs(id) + 1), 0);
  const name = datedId(new Date(Math.min(Math.max(date.getTime(), afterMs), lastMs)));
  let counter = 1;
  while (taken.includes(`${name}${counter === 1 ? '' : `-${counter}`}`)) counter += 1;
  return `${name}${counter === 1 ? '' : `-${counter}`}`;
};
