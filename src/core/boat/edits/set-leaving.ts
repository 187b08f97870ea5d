import * as z from 'zod';
import { workSchema } from '../work.ts';
import { changeWork } from './change-work.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { nameInBoat } from './name-in-boat.ts';

const { unit, to, with: cables } = workSchema.shape.leaving.unwrap().element.shape;

const goes = { sell: 'is sold', spare: 'stays as a spare', recycle: 'is recycled' } as const;

/** Says what becomes of a unit that goes, and which cables go with it; without `to` nothing is said of it. */
export const setLeaving = defineEdit({
  id: 'set-leaving',
  params: z.strictObject({ unit, to: z.exactOptional(to), with: cables }),
  title: (params, { kit }) =>
    `${nameInBoat(kit, params.unit)} ${params.to === undefined ? 'goes, nobody said where' : goes[params.to]}.`,
  change: (boat, params) => {
    findInBoat(boat.kit, params.unit, 'unit');
    changeWork(boat, (work) => {
      const others = (work.leaving ?? []).filter((one) => one.unit !== params.unit);
      const { to: fate, ...rest } = params;
      work.leaving = fate === undefined ? others : [...others, { ...rest, to: fate }];
    });
  },
});
