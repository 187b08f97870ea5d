import type { Boat } from '../../../core/boat/boat-schema.ts';
import type { LeadChoice } from '../../../core/leading/lead-choices.ts';
import { leadEdits } from '../../../core/leading/lead-edits.ts';
import type { LineEntry, Plan } from '../../../core/plan-shape.ts';
import { cardBoat } from '../../../papers/cards/card-boat.ts';
import { lineFromTo, throughWords } from '../../../papers/lists/led-words.ts';
import type { MakeEdits } from '../edit-context.ts';
import { words } from './words.ts';

/** Settles a line where it is led, as one step. */
export const leadLine = (
  { boat, plan, edit }: { boat: Boat; plan: Plan; edit: MakeEdits },
  line: LineEntry,
  choice: LeadChoice,
): void => {
  const names = cardBoat(boat);
  edit(leadEdits(plan, line, choice.ways), words.ledThrough(lineFromTo(names, line), throughWords(names, choice)));
};
