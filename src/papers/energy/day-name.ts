import type { Boat } from '../../core/boat/boat-schema.ts';
import type { StandardDay } from '../../core/boat/own-day.ts';
import type { EnergyDay } from '../../core/plan-shape.ts';

const standard: Readonly<Record<StandardDay, string>> = {
  anchor: 'At anchor',
  'under-way-day': 'Under way by day',
  'under-way-night': 'Under way by day and night',
  alongside: 'Alongside',
};

/** Whether a day is one that every boat has. */
export const isStandardDay = (when: string): when is StandardDay => Object.hasOwn(standard, when);

/** A day as a heading: the standard one, or the person's own by its name. */
export const dayName = (boat: Boat, { when }: Pick<EnergyDay, 'when'>): string =>
  boat.days?.find(({ id }) => id === when)?.name ?? (standard as Readonly<Record<string, string>>)[when] ?? when;

const partWords = {
  sailing: 'under sail',
  motoring: 'under engine',
  anchor: 'at anchor',
  alongside: 'alongside',
} as const;

/** What a day is made of, for example "10 h under engine, 14 h at anchor". */
export const partsWords = ({ parts }: Pick<EnergyDay, 'parts'>): string =>
  (['sailing', 'motoring', 'anchor', 'alongside'] as const)
    .filter((part) => parts[part] > 0)
    .map((part) => `${parts[part]} h ${partWords[part]}`)
    .join(', ');

/** Watt-hours as people read them: whole, and in kWh from 10,000. */
export const wattHours = (wh: number): string =>
  wh < 9999.5 ? `${wh.toFixed(wh > 0 && wh < 9.95 ? 1 : 0)} Wh` : `${(wh / 1000).toFixed(1)} kWh`;
