import type { Boat } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { type StandardDay, standardDays } from '../boat/own-day.ts';
import { type PartHours, partHours } from './day-hours.ts';

/** One kind of day on one boat: what it is made of, how often the bank is charged, the person's own hours. */
export interface DayOnBoat {
  readonly when: string;
  readonly like?: StandardDay;
  readonly parts: PartHours;
  readonly chargedAfter: number;
  /** the person's own hours for a unit, by its id, else by its kind */
  readonly ownHours: (kit: string, kind: string) => number | undefined;
}

const standard = (boat: Boat): DayOnBoat[] =>
  standardDays.map((when) => ({
    when,
    parts: partHours(when, boat.hull.kind),
    chargedAfter: 1,
    ownHours: () => undefined,
  }));

const own = (boat: Boat): DayOnBoat[] =>
  [...(boat.days ?? [])]
    .sort((one, other) => byCodeUnit(one.id, other.id))
    .map(({ id, like, hours, chargedAfter = 1 }) => {
      const ofUnit = new Map(hours.flatMap((entry) => (entry.unit === undefined ? [] : [[entry.unit, entry.hours]])));
      const ofKind = new Map(hours.flatMap((entry) => (entry.kind === undefined ? [] : [[entry.kind, entry.hours]])));
      return {
        when: id,
        like,
        parts: partHours(like, boat.hull.kind),
        chargedAfter,
        ownHours: (kit, kind) => ofUnit.get(kit) ?? ofKind.get(kind),
      };
    });

/** The days a boat is reckoned for: the standard ones, then the person's own by id. */
export const daysOfBoat = (boat: Boat): DayOnBoat[] => [...standard(boat), ...own(boat)];
