import type { Boat } from '../../boat/boat-schema.ts';
import type { StandardDay } from '../../boat/own-day.ts';
import type { EnergyDay } from '../../plan-shape.ts';

const standard: Readonly<Record<StandardDay, string>> = {
  anchor: 'a day at anchor',
  'under-way-day': 'a day with ten hours under way',
  'under-way-night': 'a day and night under way',
  alongside: 'a day alongside',
};

/** A day in the middle of a sentence: the standard one, or the person's own by its name. */
export const dayWords = (boat: Boat, { when }: Pick<EnergyDay, 'when'>): string => {
  const own = boat.days?.find(({ id }) => id === when);
  if (own !== undefined) return `the day “${own.name}”`;
  return (standard as Readonly<Record<string, string>>)[when] ?? when;
};

/** Charge as people read it: tenths below ten, whole Ah above. */
export const ampHours = (ah: number): string => `${ah < 10 ? ah.toFixed(1) : ah.toFixed(0)} Ah`;

const month = 30 * 24;

/** Hours as people read them: hours up to two days, then days, and no figure beyond a month. */
export const lasting = (hours: number): string => {
  if (hours > month) return 'more than a month';
  return hours < 48 ? `${hours < 10 ? hours.toFixed(1) : hours.toFixed(0)} hours` : `${(hours / 24).toFixed(1)} days`;
};
