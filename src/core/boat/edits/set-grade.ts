import * as z from 'zod';
import { gradeSchema } from '../boat-schema.ts';
import { idSchema } from '../ids.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { nameInBoat } from './name-in-boat.ts';

/** Says which grade of cable a bus is made of; without a grade the plan takes the cheapest that holds. */
export const setGrade = defineEdit({
  id: 'set-grade',
  params: z.strictObject({ bus: idSchema, grade: z.exactOptional(gradeSchema) }),
  title: ({ bus, grade }, boat) =>
    `${nameInBoat(boat.buses, bus)}: ${grade === undefined ? 'any grade of cable' : `${grade} cable`}.`,
  change: (boat, { bus, grade }) => {
    const own = findInBoat(boat.buses, bus, 'bus');
    if (grade === undefined) delete own.grade;
    else own.grade = grade;
  },
});
