import type { Boat } from '../../boat/boat-schema.ts';
import { aCompassBoat } from '../../compass-boat.test-helper.ts';
import type { CompassEntry, CompassFeed, CompassUnit } from '../../compass-shape.ts';
import type { Finding } from '../../plan-shape.ts';
import type { Rule } from '../rule.ts';
import { findingsOf } from '../rule-case.test-helper.ts';

const feed: CompassFeed = {
  line: 'feed:display.supply~main-panel',
  to: 'display.dc',
  currentA: 2,
  distanceM: 0.5,
  laid: 'pair',
  laidBy: 'plan',
  fieldUt: 0.01,
  deviationDeg: 0.04,
  keepM: 0.1,
  tooNear: false,
};
const unit: CompassUnit = { unit: 'display', distanceM: 0.5, safeM: 0.3, safeBy: 'sheet', tooNear: false };

/** A unit near a compass, or a feed that turns it, each as said. */
export const unitNear = (own: Partial<CompassUnit>): CompassUnit => ({ ...unit, ...own });
export const feedTooNear = (own: Partial<CompassFeed>): CompassFeed => ({
  ...feed,
  fieldUt: 0.4,
  deviationDeg: 1.5,
  keepM: 0.6,
  tooNear: true,
  ...own,
});

export const soundCompass: CompassEntry = {
  compass: 'card',
  horizontalUt: 15,
  allowedUt: 0.314,
  allowedDeg: 1.2,
  feeds: [],
  sumUt: 0,
  sumDeg: 0,
  units: [],
};

/** What a rule finds where a sound compass has one feed and one unit near, each differing as said. */
export const compassFindings = (
  rule: Rule,
  own: { readonly feed?: Partial<CompassFeed>; readonly unit?: Partial<CompassUnit>; readonly boat?: Boat } = {},
): Finding[] =>
  findingsOf(rule, {
    boat: own.boat ?? aCompassBoat().boat,
    plan: { compass: [{ ...soundCompass, feeds: [{ ...feed, ...own.feed }], units: [{ ...unit, ...own.unit }] }] },
  });
