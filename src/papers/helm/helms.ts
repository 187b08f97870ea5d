import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { byCodeUnit } from '../../core/units/by-code-unit.ts';

/** A place where somebody steers, or where nobody has said so, reads a screen, when the work is done. */
export interface Helm {
  readonly place: string;
  /** units at it that are to show something, by id */
  readonly screens: readonly string[];
}

/** A screen farther off than this is read from somewhere else, m (a choice of this project). */
const farM = 3;

const plotting: ReadonlySet<string> = new Set(['display', 'plotter']);

/**
 * Every place the boat is steered from but by an emergency tiller; where the boat file names none, every place with a display
 * or plotter on which something must be seen. A screen goes with the helm that is nearest to it, within three metres.
 */
export const helms = ({ kit, needs, sheets, places }: Boat, { steering }: Pick<Plan, 'steering'>): Helm[] => {
  const kindOf = new Map(sheets.map(({ id, kind }) => [id, kind]));
  const placeOf = new Map(places.map((place) => [place.id, place]));
  const wanted = new Set(needs.filter(({ must }) => must).map(({ at }) => at));
  const screens = kit.filter(({ id, fate }) => fate !== 'goes' && wanted.has(id));
  const steered = steering.filter(({ by }) => by !== 'emergency-tiller').map(({ place }) => place);
  const shown = screens.filter(({ sheet }) => plotting.has(kindOf.get(sheet) ?? '')).map(({ place }) => place);
  const found = [...new Set(steered.length > 0 ? steered : shown)].sort(byCodeUnit);
  const awayM = (one: string, other: string): number => {
    const [a, b] = [placeOf.get(one), placeOf.get(other)];
    return a === undefined || b === undefined ? farM : Math.hypot(a.xM - b.xM, a.yM - b.yM, a.zM - b.zM);
  };
  const helmOf = (at: string): string | undefined =>
    found
      .map((place) => ({ place, off: awayM(place, at) }))
      .filter(({ off }) => off < farM)
      .toSorted((one, other) => one.off - other.off)[0]?.place;
  return found.map((place) => ({
    place,
    screens: screens
      .filter((unit) => helmOf(unit.place) === place)
      .map(({ id }) => id)
      .sort(byCodeUnit),
  }));
};
