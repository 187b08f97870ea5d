import type { BoatIndex } from '../../boat/boat-index.ts';
import type { FeedEntry } from '../../plan-shape.ts';
import type { Rule } from '../rule.ts';
import { amps, fedName } from './feed-words.ts';

/** A peak above a protection that is quick, or not said to be slow. */
const isOverQuick = (index: BoatIndex, { peakA = 0, fuseA, fuseBy, panel, circuit }: FeedEntry): boolean => {
  if (fuseA === undefined || fuseBy !== 'circuit' || peakA <= fuseA) return false;
  const kind = index.panels.get(panel)?.circuits.find(({ id }) => id === circuit)?.kind;
  return kind !== 'slow-breaker';
};

/** A motor that starts and a set that sends draw more than the fuse for moments. A slow type lets that pass; a larger one would no longer protect the wire. */
export const slowFuseNeeded: Rule = {
  id: 'power/slow-fuse-needed',
  level: 'advice',
  title: 'A peak goes above the fuse: it has to be of the slow type.',
  sources: ['practice-fuse-size'],
  check: ({ index, plan }) => {
    const peaks = plan.feeds.filter((feed) => isOverQuick(index, feed));
    if (peaks.length === 0) return [];
    const told = peaks.map(
      (feed) => `${fedName(index, feed.to)} (${amps(feed.peakA ?? 0)} on ${amps(feed.fuseA ?? 0)})`,
    );
    return [
      {
        about: peaks.flatMap(({ circuit, to }) => [to, circuit]),
        says: `For moments more flows than the rating: ${told.join(', ')}.`,
        cure: 'Fit a slow fuse or breaker of the same rating, not a larger one.',
      },
    ];
  },
};
