import type { BoatIndex } from '../boat/boat-index.ts';
import type { LineKind, Place, Way } from '../boat/boat-schema.ts';
import { typicalPrices } from '../facts/prices.ts';
import { exposurePenalty, nearPenalty, transitPenalty } from '../facts/route-penalties.ts';

/** The air a way runs in: what was entered for it, else the worse of its two ends. */
const penaltyPerM = (way: Way, places: ReadonlyMap<string, Place>): number => {
  if (way.exposure !== undefined) return exposurePenalty[way.exposure].value;
  const ends = way.ends.flatMap((end) => places.get(end)?.exposure ?? []);
  return Math.max(0, ...ends.map((exposure) => exposurePenalty[exposure].value));
};

/** Millimetres of new cable that an hour of work would buy, by the owner's prices or typical ones. */
export const hourMm = (index: BoatIndex): number => {
  const { hour, dropPerM } = index.boat.prices ?? typicalPrices;
  return dropPerM === 0 ? 0 : Math.round((1000 * hour) / dropPerM);
};

/**
 * What leading one line of this kind through a way costs, in millimetres of cable: its length, and what it is worth to keep
 * out of heat, wet, bilge, the neighbourhood of what disturbs, rated bulkheads, and hours of work. A longer way is dearer.
 */
export const wayCostMm = ({
  index,
  way,
  kind,
  mm,
}: {
  readonly index: BoatIndex;
  readonly way: Way;
  readonly kind: LineKind;
  readonly mm: number;
}): number => {
  const near = (way.near ?? []).flatMap((name) => nearPenalty.get(name) ?? []);
  const perM =
    penaltyPerM(way, index.places) +
    near.reduce((sum, neighbour) => sum + (neighbour.kinds.includes(kind) ? neighbour.perM.value : 0), 0);
  const isRated = way.through === 'watertight' || way.through === 'fire';
  const transitMm = isRated ? transitPenalty.value * 1000 : 0;
  return mm + Math.round(mm * perM) + transitMm + Math.round((way.hours ?? 0) * hourMm(index));
};
