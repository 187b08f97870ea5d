import type { Boat } from '../../core/boat/boat-schema.ts';
import { freeId } from '../../core/boat/every-id.ts';
import type { OwnDay, StandardDay } from '../../core/boat/own-day.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { dayName } from './day-name.ts';

/** A day of the person's own that is as a standard one until hours are said in it. */
export const dayLike = (boat: Boat, like: StandardDay): OwnDay => ({
  id: freeId(boat, 'own-day'),
  name: `${dayName(boat, { when: like })}, as we do it`,
  like,
  hours: [],
});

/** The same day with other hours for one unit; without hours the unit runs as on the day this one is like. */
export const withHours = (day: OwnDay, unit: string, hours: number | undefined): OwnDay => ({
  ...day,
  hours: [...day.hours.filter((entry) => entry.unit !== unit), ...(hours === undefined ? [] : [{ unit, hours }])],
});

/** Hours as somebody writes them, from 0 to 24 with a point or a comma; undefined where it is none. */
export const hoursFrom = (text: string): number | undefined => {
  const written = text.trim().replace(',', '.');
  const hours = /^\d+(\.\d+)?$/.test(written) ? Number(written) : Number.NaN;
  return hours >= 0 && hours <= 24 ? hours : undefined;
};

/** Units that take power on some day of the plan and nothing on this one: those whose hours can be put in besides. */
export const unitsBesides = (
  boat: Boat,
  { energy }: Pick<Plan, 'energy'>,
  when: string,
): { id: string; name: string }[] => {
  const its = new Set(energy.find((day) => day.when === when)?.byKit.map(({ kit }) => kit));
  const all = new Set(energy.flatMap(({ byKit }) => byKit.map(({ kit }) => kit)));
  return boat.kit.filter(({ id }) => all.has(id) && !its.has(id)).map(({ id, name }) => ({ id, name }));
};
