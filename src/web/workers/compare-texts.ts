import { readBoat } from '../../core/boat/read-boat.ts';
import { boatChangeWords } from '../../papers/lists/boat-change-words.ts';

/** What one text of a boat says otherwise than the one before it, in words; throws UserError where one is no boat. */
export const compareTexts = ({ before, after }: { before: string; after: string }): string =>
  before === after ? '' : boatChangeWords({ before: readBoat(before), after: readBoat(after) });
