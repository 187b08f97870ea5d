import type { SaveState } from './boat-saver.ts';

/** Whether leaving a boat in this state loses edits that no file holds; a save under way goes on by itself. */
const losesEdits = (state: SaveState): boolean =>
  state.kind === 'changed' || state.kind === 'failed' || (state.kind === 'page' && state.edited);

/** Asks before edits are lost, and only then. */
export const mayLeaveBoat = (state: SaveState): boolean =>
  !losesEdits(state) ||
  window.confirm('The edits of this boat are in no file. Leave them? To keep them, stay and save a copy.');
