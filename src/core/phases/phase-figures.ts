import type { PhaseBus, PhaseFeed } from '../phases-shape.ts';
import type { BusEntry, FeedEntry } from '../plan-shape.ts';

/** What the checker says of a tee that is left free on a settled trunk for a unit that comes later: that is no fault. */
const freeTee = /^A tee serves spare@/;

/** A bus as one phase tells it. */
export const phaseBus = ({
  id,
  grade,
  lengthM,
  longestDropM,
  devices,
  len,
  ends,
  walk,
  volts,
  layout,
}: BusEntry): PhaseBus => {
  const lowest = volts.map(({ lowestV }) => lowestV);
  const spares = new Map<string, number>();
  for (const { place, tees } of walk) {
    const count = tees.filter((tee) => tee.startsWith('spare@')).length;
    if (count > 0) spares.set(place, (spares.get(place) ?? 0) + count);
  }
  return {
    id,
    grade,
    lengthM,
    longestDropM,
    devices,
    len,
    ends,
    ...(lowest.length === 0 ? {} : { lowestV: Math.min(...lowest) }),
    spares: [...spares].map(([place, count]) => ({ place, count })),
    broken: layout.broken.filter((says) => !freeTee.test(says)),
  };
};

/** A feed in one phase beside the same feed in the last. */
export const phaseFeed = (feed: FeedEntry, later: FeedEntry | undefined): PhaseFeed[] => {
  if (feed.areaMm2 === undefined) return [];
  const of = ({ loadA, areaMm2 = 0, fuseA }: FeedEntry) => ({
    loadA,
    areaMm2,
    ...(fuseA === undefined ? {} : { fuseA }),
  });
  const grows =
    later?.areaMm2 !== undefined && (later.areaMm2 > feed.areaMm2 || (later.fuseA ?? 0) > (feed.fuseA ?? 0));
  return [{ line: feed.line, ...of(feed), ...(grows ? { later: of(later) } : {}) }];
};
