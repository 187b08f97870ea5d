import { derivedReadings } from '../facts/derived-readings.ts';
import type { ReadingId } from '../facts/reading-ids.ts';
import type { Effect } from './effect.ts';
import type { HoldingWay, Link, MadeAt, NeedWays } from './need-ways.ts';

/** Whether a way still holds in one failure; `sure` counts a bus with one terminator as working, and else as dead. */
export type WayHolds = (way: HoldingWay) => boolean;

const linkHolds = ({ cut, buses }: Effect, link: Link, hopeful: boolean): boolean => {
  if (link.by === 'air') return true;
  if (link.by === 'line') return !cut.has(link.line);
  const state = buses.get(link.bus);
  if (state === undefined) return true;
  const part = state.partOf.get(link.from);
  return part !== undefined && part === state.partOf.get(link.to) && (hopeful || !state.doubtful);
};

/** What still holds of readings that are worked out of others: by the best recipe left, with the reference that has. */
const madeHolds = (
  { kit, reading, references }: MadeAt,
  has: (kit: string, reading: ReadingId) => boolean,
): boolean => {
  const recipes = derivedReadings.get(reading) ?? [];
  const left = recipes.filter(({ from }) => from.every((part) => has(kit, part)));
  const [best] = left;
  if (best === undefined) return recipes.length === 0;
  return (
    left.length === recipes.length ||
    best.reference === undefined ||
    references.every((reference) => reference === best.reference)
  );
};

/** Asks of one failure after another which ways still hold. `hopeful`: a bus with one terminator is taken to work. */
export const holdsIn = (ways: NeedWays, effect: Effect, hopeful: boolean): WayHolds => {
  const known = new Map<string, boolean>();
  const has = (kit: string, reading: ReadingId): boolean => {
    const key = `${kit} ${reading}`;
    const found = known.get(key);
    if (found !== undefined) return found;
    known.set(key, false);
    const held = ways.presence(kit, reading).some(holds);
    known.set(key, held);
    return held;
  };
  const holds: WayHolds = ({ units, hops, made, variationAt }) =>
    units.every((kit) => !effect.dark.has(kit)) &&
    hops.every((links) => links.some((link) => linkHolds(effect, link, hopeful))) &&
    (made === undefined || madeHolds(made, has)) &&
    (variationAt === undefined || has(variationAt, 'variation'));
  return holds;
};
