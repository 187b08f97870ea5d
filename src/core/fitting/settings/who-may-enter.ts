/** Who may type the static data of an AIS or a ship's number into a set. */
export type MayEnter = 'anyone' | 'radio-installer' | 'once' | 'ask-flag';

/** A set, the flag she sails under, absent where nobody said, and its class where it is an AIS. */
export interface EnteredSet {
  readonly flag?: string;
  readonly is: 'ais-class-a' | 'ais-class-b' | 'radio';
}

/**
 * Who may enter what makes a set known as this ship's. Under the flag of the United States the static data of an AIS of class B
 * is for its vendor or one who installs such sets for a living, in no event for the user; class A is outside that rule. Elsewhere
 * owners commonly enter them, once.
 */
export const whoMayEnter = ({ flag, is }: EnteredSet): MayEnter => {
  if (is === 'ais-class-a') return 'anyone';
  if (is === 'radio') return 'once';
  if (flag === undefined) return 'ask-flag';
  return flag === 'US' ? 'radio-installer' : 'once';
};

/** Whether one person may do it. */
export const mayEnter = (set: EnteredSet, by: 'owner' | 'radio-installer'): boolean =>
  by === 'radio-installer' || whoMayEnter(set) !== 'radio-installer';

/** Whether a number holds where she goes: one of a private registrar does not hold at foreign ports. */
export const numberHolds = ({
  from,
  goesAbroad,
}: {
  from: 'state' | 'private-registrar';
  goesAbroad: boolean;
}): boolean => from === 'state' || !goesAbroad;
