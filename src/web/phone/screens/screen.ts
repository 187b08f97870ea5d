import type { PhoneHand } from '../phone-hand.ts';
import type { PhoneState } from '../store/phone-state.ts';

/** One screen of a boat: made once, and told of each state. */
export interface Screen {
  readonly element: HTMLElement;
  readonly update: (state: PhoneState) => void;
}

export interface ScreenParts {
  readonly hand: PhoneHand;
  /** the name this phone signs with */
  readonly ownName: () => string | undefined;
}
