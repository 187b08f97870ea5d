import { UserError } from '../../../core/boat/user-error.ts';
import type { Refused } from '../../../core/boat-store-shape.ts';
import { words } from './words.ts';

/**
 * What the browser, or a reader of what is to be kept, has against something, in a sentence. Anything else is a fault in
 * the program, and thrown again.
 */
export const browserRefusal = (error: unknown): Refused => {
  if (error instanceof UserError) {
    const { says, place, whatToDo } = error;
    return { refusal: { says, whatToDo, ...(place === undefined ? {} : { place }) } };
  }
  if (!(error instanceof DOMException)) throw error;
  return error.name === 'QuotaExceededError'
    ? { refusal: { says: words.full, whatToDo: words.makeRoom } }
    : { refusal: { says: words.barred, whatToDo: words.allow } };
};
