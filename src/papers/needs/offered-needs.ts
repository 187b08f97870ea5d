import type { Boat, Need } from '../../core/boat/boat-schema.ts';
import type { EditCall } from '../../core/boat/history.ts';
import { needsOfToday } from '../../core/kit/needs-of-today.ts';
import { usualNeeds } from '../../core/kit/usual-needs.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { needsWords } from '../kit/needs-words.ts';

/** Needs that can be taken in with one press. */
export interface OfferedNeeds {
  readonly count: number;
  readonly edits: readonly EditCall[];
  /** the sentence of the step */
  readonly title: string;
  /** what each unit would want, a sentence each */
  readonly says: readonly string[];
}

const offer = (boat: Boat, needs: readonly Need[], title: string): OfferedNeeds | undefined =>
  needs.length === 0
    ? undefined
    : {
        count: needs.length,
        edits: needs.map((params) => ({ edit: 'add-need', params })),
        title,
        says: needsWords(boat, needs),
      };

/** The usual needs of one unit, or of all, that the boat does not ask for yet; undefined where none is left. */
export const offeredUsual = (boat: Boat, unit?: string): OfferedNeeds | undefined => {
  const name = boat.kit.find(({ id }) => id === unit)?.name;
  return offer(
    boat,
    usualNeeds(boat, unit),
    name === undefined ? 'Take in the usual needs of every unit.' : `Take in the usual needs of ${name}.`,
  );
};

/** What the screens show before the refit and nobody asks for yet, as musts; undefined where none is left. */
export const offeredToday = (boat: Boat, plan: Pick<Plan, 'before'>): OfferedNeeds | undefined =>
  offer(boat, needsOfToday(boat, plan.before), 'What is seen today must be seen again.');
