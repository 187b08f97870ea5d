/** The same plain data, down to its last part such that whoever would change it fails. */
export const frozen = <Of>(of: Of): Of => {
  if (typeof of === 'object' && of !== null && !Object.isFrozen(of)) {
    Object.freeze(of);
    for (const part of Object.values(of)) frozen(part);
  }
  return of;
};
