import { edits } from '../core/boat/edits/index.ts';
import { UserError } from '../core/boat/user-error.ts';
import { writeBoat } from '../core/boat/write-boat.ts';
import type { Plan } from '../core/plan-shape.ts';
import type { LoadedBoat } from '../node/files/load-boat.ts';
import { saveBoat } from '../node/files/save-boat.ts';

/**
 * Hands out labels to the lines of a plan that have none, and keeps them in the boat file; says how many it gave.
 *
 * @throws UserError where the boat came from standard input, or its file cannot be written or was changed meanwhile
 */
export const giveLabels = async (path: string, { boat, hash }: LoadedBoat, plan: Plan): Promise<number> => {
  const lines = plan.lines.filter(({ label }) => label === undefined).map(({ id }) => id);
  if (lines.length === 0) return 0;
  if (path === '-') {
    throw new UserError({
      says: 'Labels are kept in the boat file, and standard input is none.',
      whatToDo: 'Give the boat file by its name.',
    });
  }
  const text = writeBoat(edits['give-labels'].apply(boat, { lines }));
  await saveBoat({ path, text, readHash: hash });
  return lines.length;
};
