import type { BoatIndex } from '../../boat/boat-index.ts';
import type { Boat, Kit } from '../../boat/boat-schema.ts';
import { limitValue } from '../../boat/limit-value.ts';
import { isAboard, lastPhase } from '../../boat/phase.ts';
import { compassLimits } from '../../facts/compass-figures.ts';
import { headingClearanceM, headingNeighbourOf } from '../../facts/heading-figures.ts';
import type { HeadingNear } from '../../heading-shape.ts';
import type { PlanDraft } from '../../plan-shape.ts';
import type { Spot } from '../../power/distance-to-route.ts';
import { type FeedRoute, feedRoutes } from '../../power/feeds-near.ts';
import { mayTurnCompass } from '../../power/may-turn-compass.ts';

/** One thing that turns a heading sensor, where it stands. */
export type HeadingObstacle = Pick<HeadingNear, 'id' | 'is' | 'leastM' | 'by'> & { readonly at: Spot };

/** All that may turn a heading sensor aboard one boat. */
export interface HeadingField {
  readonly hull: Boat['hull'];
  readonly horizontalUt: number;
  readonly obstacles: readonly HeadingObstacle[];
  readonly feeds: readonly FeedRoute[];
}

/** What the surroundings of heading sensors are planned from. */
export interface HeadingInput extends Pick<PlanDraft, 'lines' | 'feeds'> {
  readonly index: BoatIndex;
}

/** Whether iron and currents turn a heading sensor; taken so where nobody has said how it finds north. */
export const isMagnetic = (index: BoatIndex, unit: string): boolean => {
  const sheet = index.sheetOf.get(unit);
  const north = sheet?.sensor?.north;
  return north === undefined ? sheet?.compassSafe?.valueM !== 0 : north === 'fluxgate' || north === 'nine-axis';
};

const obstacleOf = (index: BoatIndex, { id, place }: Kit): HeadingObstacle[] => {
  const at = index.places.get(place);
  const sheet = index.sheetOf.get(id);
  // two heading sensors side by side have no magnets: what counts of one is on its sheet
  if (at === undefined || sheet === undefined) return [];
  const is = headingNeighbourOf.get(sheet.kind);
  if (is !== undefined) return [{ id, is, at, leastM: headingClearanceM(is), by: 'kind' }];
  const leastM = sheet.compassSafe?.valueM;
  if (leastM !== undefined) return leastM === 0 ? [] : [{ id, is: 'unit', at, leastM, by: 'sheet' }];
  return mayTurnCompass(sheet)
    ? [{ id, is: 'unit', at, leastM: compassLimits.unknownItemWarnBelow.value, by: 'taken' }]
    : [];
};

/** Where no engine stands among the units, the engine space stands for it. */
const engineSpace = ({ boat }: BoatIndex): HeadingObstacle[] =>
  boat.places
    .filter(({ exposure }) => exposure === 'engine')
    .map((at) => ({ id: at.id, is: 'engine', at, leastM: headingClearanceM('engine'), by: 'kind' }));

/** The batteries with the wires at them, and every unit aboard when the work is done. */
const obstaclesOf = (index: BoatIndex): HeadingObstacle[] => {
  const { kit, supply } = index.boat;
  const last = lastPhase(index.boat);
  const units = kit.filter((unit) => isAboard(unit, last)).flatMap((unit) => obstacleOf(index, unit));
  const banks = supply.banks.flatMap(({ id, place }): HeadingObstacle[] => {
    const at = index.places.get(place);
    return at === undefined
      ? []
      : [{ id, is: 'high-current', at, leastM: headingClearanceM('high-current'), by: 'kind' }];
  });
  return [...units, ...banks, ...(units.some(({ is }) => is === 'engine') ? [] : engineSpace(index))];
};

/** Gathers what may turn a heading sensor: units by kind or by their sheets, batteries, engines, feeds with their currents. */
export const headingField = (input: HeadingInput): HeadingField => ({
  hull: input.index.boat.hull,
  horizontalUt: limitValue(input.index.boat, 'compass-field'),
  obstacles: obstaclesOf(input.index),
  feeds: feedRoutes(input),
});
