import type { BoatIndex } from './boat/boat-index.ts';
import { byCodeUnit } from './boat/ids.ts';
import { limitValue } from './boat/limit-value.ts';
import { isAboard, lastPhase } from './boat/phase.ts';
import type { CompassEntry } from './compass-shape.ts';
import { compassLimits } from './facts/compass-figures.ts';
import type { LineEntry } from './plan-shape.ts';
import { compassDeviation } from './power/compass-deviation.ts';
import { compassSafeDistance } from './power/compass-safe-distance.ts';
import { feedRoutes, feedsNear } from './power/feeds-near.ts';
import { unitsAtCompass } from './power/units-at-compass.ts';
import type { FeedEntry } from './power-shape.ts';

/** What the surroundings of the compasses are planned from. */
export interface CompassInput {
  readonly index: BoatIndex;
  readonly lines: readonly LineEntry[];
  readonly feeds: readonly FeedEntry[];
}

/**
 * Every magnetic steering compass that is aboard when the work is done, with the feeds within 5 m and the units that are
 * near: field, deviation, and how far each must keep. Sorted by id.
 */
export const planCompass = (input: CompassInput): CompassEntry[] => {
  const { index } = input;
  const aboard = index.boat.kit.filter((unit) => isAboard(unit, lastPhase(index.boat)));
  const horizontalUt = limitValue(index.boat, 'compass-field');
  const routes = feedRoutes(input);
  const { limitFieldUt } = compassSafeDistance({ currentA: 0, compass: 'steering' });
  return aboard
    .filter(({ id }) => index.sheetOf.get(id)?.kind === 'steering-compass')
    .map((compass): CompassEntry => {
      const at = index.places.get(compass.place);
      const feeds = at === undefined ? [] : feedsNear(routes, at, horizontalUt);
      const sumUt = feeds.reduce((sum, { fieldUt }) => sum + fieldUt, 0);
      return {
        compass: compass.id,
        horizontalUt,
        allowedUt: limitFieldUt,
        allowedDeg: compassLimits.steering.value / horizontalUt,
        feeds: feeds.sort((one, other) => byCodeUnit(one.line, other.line)),
        sumUt,
        sumDeg: compassDeviation({ fieldUt: sumUt, horizontalUt }).squareDeg,
        units: unitsAtCompass(index, compass, aboard).sort((one, other) => byCodeUnit(one.unit, other.unit)),
      };
    })
    .sort((one, other) => byCodeUnit(one.compass, other.compass));
};
