import { aBoat } from '../a-boat.test-helper.ts';
import type { Boat } from '../boat-schema.ts';
import { UserError } from '../user-error.ts';
import { type EditId, edits } from './index.ts';

/** Why an edit of a boat, the small one unless another is given, is turned away; undefined where it is made. */
export const refusalOf = (id: EditId, params: unknown, boat: Boat = aBoat().boat): UserError | undefined => {
  try {
    edits[id].apply(boat, params);
    return undefined;
  } catch (error) {
    if (error instanceof UserError) return error;
    throw error;
  }
};
