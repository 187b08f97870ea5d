import { applyEdits, type EditCall } from './history.ts';
import type { History } from './start-history.ts';
import { UserError } from './user-error.ts';

/** The history with one more edit, or as it was where the edit is refused. */
export const tried = (history: History, call: EditCall): History => {
  try {
    return applyEdits(history, [call]);
  } catch (error) {
    if (error instanceof UserError) return history;
    throw error;
  }
};
