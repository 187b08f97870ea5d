/** A date and time that is sorted as it is read: `2026-03-01-09-30-00-000`, universal time. */
const dated = (date: Date): string => date.toISOString().replace(/[T:.]/g, '-').replace('Z', '');

/**
 * The name under which an earlier state of a boat is kept: when it was saved over, and a number behind it where that is taken.
 *
 * @example freeStateId([], new Date(0)) // '1970-01-01-00-00-00-000'
 */
export const freeStateId = (taken: readonly string[], date: Date): string => {
  const name = dated(date);
  let counter = 1;
  while (taken.includes(`${name}${counter === 1 ? '' : `-${counter}`}`)) counter += 1;
  return `${name}${counter === 1 ? '' : `-${counter}`}`;
};
