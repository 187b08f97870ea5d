import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { ListTable } from '../table/list-table.ts';
import { energyDays } from './energy-days.ts';

/** What every unit takes in every kind of day, before the refit and after it. */
export const energyList = (boat: Boat, plan: Plan): ListTable => ({
  id: 'energy',
  title: 'Energy of a day',
  says: 'What each unit takes in a day of each kind, before the refit and after it.',
  columns: [
    { id: 'day', head: 'day', share: 1.3, once: true },
    { id: 'unit', head: 'unit', share: 2.4 },
    { id: 'unit-id', head: 'unit id', kind: 'label', printed: false },
    { id: 'hours', head: 'hours', kind: 'figure', digits: 1 },
    { id: 'before-ah', head: 'before', unit: 'Ah', kind: 'figure', digits: 1 },
    { id: 'before-wh', head: 'before', unit: 'Wh', kind: 'figure', digits: 0 },
    { id: 'after-ah', head: 'after', unit: 'Ah', kind: 'figure', digits: 1 },
    { id: 'after-wh', head: 'after', unit: 'Wh', kind: 'figure', digits: 0 },
    { id: 'saves', head: 'off: its bank lasts longer by', unit: 'h', kind: 'figure', digits: 1, share: 1.5 },
    { id: 'remark', head: 'remark', share: 1.6 },
  ],
  rows: energyDays(boat, plan).flatMap(({ when, name, units }) => {
    const figures = plan.energy.find((day) => day.when === when)?.byKit ?? [];
    return units.map(({ kit, name: unit, remark }) => {
      const { before, after, savesH } = figures.find((own) => own.kit === kit) ?? {};
      return [name, unit, kit, (after ?? before)?.hours, before?.ah, before?.wh, after?.ah, after?.wh, savesH, remark];
    });
  }),
  empty: 'Nothing aboard is known to draw anything.',
});
