import { createContext, useContext } from 'react';
import type { EditCall } from '../../core/boat/history.ts';

/**
 * Makes some edits of the boat that is open as one step of undo. `title` says what the step does; without it the edits
 * say it themselves. Whether they were made, and what they changed, stands in the line under the top bar.
 *
 * @example edit([{ edit: 'set-fate', params: { unit: 'gnss', fate: 'goes' } }])
 */
export type MakeEdits = (edits: readonly EditCall[], title?: string) => void;

export const EditContext = createContext<MakeEdits>(() => {
  throw new Error('There is no boat here to edit.');
});

/** What is called in place of adding to the log of a boat that is only looked at; absent where her log may be added to. */
export const LookOnlyContext = createContext<(() => void) | undefined>(undefined);

/** The one way by which anything on the page changes the boat. */
export const useEdit = (): MakeEdits => useContext(EditContext);
