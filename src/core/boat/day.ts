import * as z from 'zod';

/** A day of the calendar, as year-month-day. */
export const daySchema = z
  .string()
  .regex(/^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/, 'A day is written year-month-day, for example 2027-03-31.');
