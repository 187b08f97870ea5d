import { readBoat } from '../../core/boat/read-boat.ts';
import { UserError } from '../../core/boat/user-error.ts';
import { type KeptState, keptStates } from './keep-backup.ts';
import { readText } from './read-text.ts';

/** A backup that can be read. */
export interface GoodState extends KeptState {
  readonly text: string;
}

/** The newest backup of a boat file that is a good boat file itself; undefined where there is none. */
export const goodState = async (path: string): Promise<GoodState | undefined> => {
  for (const state of await keptStates(path)) {
    try {
      const { text } = await readText(state.path);
      readBoat(text);
      return { ...state, text };
    } catch (error) {
      if (!(error instanceof UserError)) throw error;
    }
  }
  return undefined;
};
