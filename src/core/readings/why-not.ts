import type { Need } from '../boat/boat-schema.ts';
import { wordsOfBreak } from './break-words.ts';
import { nearestBreak } from './nearest-break.ts';
import { noSource } from './no-source.ts';
import { comesLater, sourceLeaves } from './other-phases.ts';
import type { Reaches } from './reaches.ts';
import type { Refit } from './refit.ts';
import { tooPoor } from './too-poor.ts';
import type { WhyNot } from './why-words.ts';

/**
 * The link at which a reading that does not arrive breaks, in one sentence, and cures where one can be stated. What the
 * refit brings later comes first, then what arrives but is not good enough, then what the refit takes away, then the
 * break nearest to the screen, then that nothing sends it.
 */
export const whyNotOf = (refit: Refit, reaches: Reaches, need: Need): WhyNot => {
  const poor = tooPoor(reaches, need);
  const why = comesLater(refit, reaches, need, poor) ?? poor;
  if (why !== undefined) return why;
  const found = nearestBreak(reaches.network, reaches.of(need.reading), { screen: need.at, reading: need.reading });
  const left = sourceLeaves(refit, reaches, need, found);
  if (left !== undefined) return left;
  return found === undefined ? noSource(reaches, need) : wordsOfBreak(reaches.network, need, found);
};
