import type { Boat } from '../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../core/plan-shape.ts';
import { languageWords } from '../../../papers/cards/language-words.ts';
import type { Note } from '../margin/notes.ts';
import { words } from './words.ts';

/** One unit of the boat in words: what the drawing shows of it, for those who cannot see it. */
export interface UnitRow {
  readonly id: string;
  readonly name: string;
  readonly fate: 'stays' | 'goes' | 'comes';
  readonly place: string;
  readonly joined: readonly string[];
  readonly notes: readonly Note[];
  readonly balloon?: number;
}

const joinedWith = (boat: Boat, plan: Plan, unitId: string): readonly string[] => {
  const buses = new Map(boat.buses.map((bus) => [bus.id, bus.name]));
  const names = new Map(boat.kit.map((unit) => [unit.id, unit.name]));
  const joined = plan.joins
    .filter((join) => join.members.some((member) => member.kit === unitId))
    .map((join) => {
      if (join.bus !== undefined) return buses.get(join.bus) ?? join.bus;
      const others = join.members.filter((member) => member.kit !== unitId).map((member) => names.get(member.kit));
      return words.joinedWith(languageWords[join.kind], [...new Set(others)].join(', '));
    });
  return [...new Set(joined)];
};

/** Every unit of the boat with its place, what it is joined to and the notes about it; numbered ones first. */
export const unitRows = ({
  boat,
  plan,
  notes,
  numbers,
}: {
  boat: Boat;
  plan: Plan;
  notes: readonly Note[];
  numbers: ReadonlyMap<string, number>;
}): readonly UnitRow[] => {
  const places = new Map(boat.places.map((place) => [place.id, place.name]));
  const rows = boat.kit.map((unit): UnitRow => {
    const balloon = numbers.get(unit.id);
    return {
      id: unit.id,
      name: unit.name,
      fate: unit.fate,
      place: places.get(unit.place) ?? unit.place,
      joined: joinedWith(boat, plan, unit.id),
      notes: notes.filter((note) => note.lights.includes(unit.id)),
      ...(balloon === undefined ? {} : { balloon }),
    };
  });
  const last = Number.POSITIVE_INFINITY;
  return rows.sort((a, b) => {
    const [one, other] = [a.balloon ?? last, b.balloon ?? last];
    return one === other ? 0 : one - other;
  });
};
