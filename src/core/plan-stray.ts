import type { BoatIndex } from './boat/boat-index.ts';
import { planCompass } from './plan-compass.ts';
import type { LineEntry, PlanDraft } from './plan-shape.ts';
import type { FeedEntry } from './power-shape.ts';

/** What stray fields are planned from. */
export interface StrayInput {
  readonly index: BoatIndex;
  readonly lines: readonly LineEntry[];
  readonly feeds: readonly FeedEntry[];
}

export type StrayParts = Pick<PlanDraft, 'compass'>;

/** Where currents and their fields go that should not: what turns each compass. */
export const planStray = (input: StrayInput): StrayParts => ({ compass: planCompass(input) });
