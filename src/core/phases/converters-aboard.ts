import type { BoatIndex } from '../boat/boat-index.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { isAboard } from '../boat/phase.ts';
import type { PhaseEntry } from '../phases-shape.ts';
import type { Arrival } from '../readings/arrivals.ts';

/** Kinds of unit that are aboard only to turn one language into another, or to gather several into one. */
const passingKinds: ReadonlySet<string> = new Set(['converter', 'gateway', 'multiplexer']);

const isPassing = (index: BoatIndex, kit: string): boolean => {
  const sheet = index.sheetOf.get(kit);
  return sheet !== undefined && passingKinds.has(sheet.kind) && (sheet.turns ?? []).length > 0;
};

/** The converters and multiplexers aboard in a phase, each with the needs that are met by way of it. Sorted by unit. */
export const convertersAboard = (
  index: BoatIndex,
  phase: number,
  arrived: readonly Arrival[],
): PhaseEntry['converters'] =>
  index.boat.kit
    .filter((unit) => isAboard(unit, phase) && isPassing(index, unit.id))
    .map(({ id }) => ({
      kit: id,
      for: arrived
        .filter(({ by, at }) => at !== id && by.some((port) => port.startsWith(`${id}.`)))
        .map(({ reading, at }) => ({ reading, at })),
    }))
    .sort((a, b) => byCodeUnit(a.kit, b.kit));

/** Converters that come with the refit, serve in some phase, and serve nothing in the last: bought for the time between. */
export const forTheTimeBetween = (index: BoatIndex, byPhase: readonly PhaseEntry['converters'][]): string[] => {
  const last = byPhase.at(-1) ?? [];
  return last
    .filter((entry) => entry.for.length === 0 && index.kit.get(entry.kit)?.fate === 'comes')
    .map(({ kit }) => kit)
    .filter((kit) => byPhase.some((phase) => phase.some((entry) => entry.kit === kit && entry.for.length > 0)));
};
