import type { Boat } from '../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../core/plan-shape.ts';
import { type CardBoat, cardBoat } from '../../../papers/cards/card-boat.ts';
import { type LineCard, lineCard } from '../../../papers/cards/line-card.ts';
import { type ReadingCard, type ReadingKey, readingCard } from '../../../papers/cards/reading-card.ts';
import { type UnitCard, unitCard } from '../../../papers/cards/unit-card.ts';

/** What a card is asked to speak of. */
export type CardChoice =
  | { readonly kind: 'unit'; readonly id: string }
  | { readonly kind: 'line'; readonly label: string }
  | ({ readonly kind: 'reading' } & ReadingKey);

/** A card made from a plan, and the ids it lights on the drawing. */
export type CardContent =
  | { readonly kind: 'unit'; readonly key: string; readonly card: UnitCard; readonly lights: readonly string[] }
  | { readonly kind: 'line'; readonly key: string; readonly card: LineCard; readonly lights: readonly string[] }
  | { readonly kind: 'reading'; readonly key: string; readonly card: ReadingCard; readonly lights: readonly string[] };

/** Makes the cards of one plan. */
export interface CardMaker {
  readonly index: CardBoat;
  /** undefined where the boat has no such unit, or nothing asks for the reading */
  readonly cardOf: (choice: CardChoice) => CardContent | undefined;
}

const keyOf = (choice: CardChoice): string => {
  if (choice.kind === 'reading') return `reading ${choice.reading} ${choice.instance ?? ''}`;
  return choice.kind === 'unit' ? `unit ${choice.id}` : `line ${choice.label}`;
};

/** The maker of cards for one boat and its plan; keep it as long as the plan. */
export const cardMaker = (boat: Boat, plan: Plan): CardMaker => {
  const index = cardBoat(boat);
  return {
    index,
    cardOf: (choice) => {
      const key = keyOf(choice);
      if (choice.kind === 'unit') {
        const card = unitCard(index, plan, choice.id);
        return card === undefined ? undefined : { kind: 'unit', key, card, lights: [choice.id] };
      }
      if (choice.kind === 'line') {
        const card = lineCard(index, plan, choice.label);
        return { kind: 'line', key, card, lights: card.lights };
      }
      const card = readingCard(index, plan, choice);
      return card === undefined ? undefined : { kind: 'reading', key, card, lights: card.lights };
    },
  };
};
