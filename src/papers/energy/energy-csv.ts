import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { csvText } from '../lists/csv.ts';
import { energyDays } from './energy-days.ts';

const header = [
  'day',
  'unit',
  'unit id',
  'hours',
  'before Ah',
  'before Wh',
  'after Ah',
  'after Wh',
  'off: its bank lasts longer by h',
  'remark',
] as const;

/** What every unit takes in every kind of day, as CSV. */
export const energyCsv = (boat: Boat, plan: Plan): string =>
  csvText([
    header,
    ...energyDays(boat, plan).flatMap(({ name, units }) =>
      units.map((row) => [
        name,
        row.name,
        row.kit,
        row.hours,
        row.beforeAh,
        row.beforeWh,
        row.afterAh,
        row.afterWh,
        row.savesH,
        row.remark ?? '',
      ]),
    ),
  ]);
