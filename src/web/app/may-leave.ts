import type { SaveState } from './saving/boat-saver.ts';
import { words } from './words.ts';

/** Whether leaving a boat in this state loses edits that neither a file nor this browser holds. */
const losesEdits = (state: SaveState): boolean => {
  switch (state.kind) {
    case 'page':
      return state.edited;
    case 'clash':
    case 'changed':
    case 'failed':
      return !state.isKept;
    default:
      return false;
  }
};

/** Asks before edits are lost, and only then. */
export const mayLeaveBoat = (state: SaveState): boolean => !losesEdits(state) || window.confirm(words.leave);
