import type { BoatIndex } from '../../boat/boat-index.ts';
import { byCodeUnit } from '../../boat/ids.ts';
import { crewItems } from '../../facts/crew-items.ts';
import type { BoatLog } from '../../log/boat-log.ts';

/** One thing to show, the units it is shown at, and who did it, with the day. */
export interface CrewShown {
  readonly id: string;
  readonly does: string;
  readonly units: readonly string[];
  readonly shown: ReadonlyMap<string, string>;
}

const prefix = 'crew/';

/** The id under which the log keeps that a person was shown a thing. */
export const crewTickId = (item: string, person: string): string => `${prefix}${item}:${person.trim()}`;

/** Everybody who was shown something, in the order of their names. */
export const crewOf = (log: BoatLog): string[] =>
  [
    ...new Set(
      [...log.ticks].flatMap(([of, { done }]) =>
        done && of.startsWith(prefix) ? [of.slice(of.indexOf(':') + 1)] : [],
      ),
    ),
  ].sort(byCodeUnit);

/** The round with the crew on one boat: what is shown where, and to whom it was. What is not aboard is left out. Pure. */
export const crewRound = (index: BoatIndex, log: BoatLog): CrewShown[] => {
  const people = crewOf(log);
  return crewItems.flatMap(({ id, does, kinds }): CrewShown[] => {
    const units = index.boat.kit
      .filter((unit) => unit.fate !== 'goes' && kinds?.includes(index.sheetOf.get(unit.id)?.kind ?? '') === true)
      .map((unit) => unit.id)
      .sort(byCodeUnit);
    if (kinds !== undefined && units.length === 0) return [];
    const shown = people.flatMap((person): [string, string][] => {
      const tick = log.ticks.get(crewTickId(id, person));
      return tick?.done === true ? [[person, tick.at.slice(0, 10)]] : [];
    });
    return [{ id, does, units, shown: new Map(shown) }];
  });
};
