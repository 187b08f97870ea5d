import * as z from 'zod';
import { shipPaperIds } from '../facts/ship-papers.ts';
import { atMostOnce } from './at-most-once.ts';
import { daySchema } from './day.ts';

const nameSchema = z.string().min(1).max(120);

/** Where one paper stands. */
export const paperworkSchema = z.strictObject({
  paper: z.enum(shipPaperIds),
  state: z.enum(['asked', 'have', 'not-needed']),
  /** the day it was asked for, or came */
  on: z.exactOptional(daySchema),
  /** what the office said it takes */
  waitDays: z.exactOptional(z.int().min(0).max(1000).meta({ unit: 'days' })),
});
export type Paperwork = z.infer<typeof paperworkSchema>;

/** The nine digits by which her own sets are known. */
export const shipNumberSchema = z.strictObject({
  digits: z.string().regex(/^\d{9}$/, 'A ship’s number is nine digits.'),
  from: z.enum(['state', 'private-registrar']),
  /** the second person, who read them back digit by digit */
  readBackBy: z.exactOptional(nameSchema),
});

/** What the law asks for around her radios: flag, numbers, licences. */
export const shipPapersSchema = z.strictObject({
  flag: z.exactOptional(
    z
      .string()
      .regex(/^[A-Z]{2}$/, 'A flag state is written with the two capital letters of its country, for example GB.'),
  ),
  /** she calls at ports of other states */
  goesAbroad: z.exactOptional(z.boolean()),
  /** who fits and sets up the radios */
  workBy: z.exactOptional(z.enum(['owner', 'radio-installer'])),
  /** as it is to stand in her AIS, where that is not the name of the file */
  shipName: z.exactOptional(nameSchema),
  callSign: z.exactOptional(
    z.string().regex(/^[A-Z0-9]{3,8}$/, 'A call sign is three to eight capital letters and digits.'),
  ),
  number: z.exactOptional(shipNumberSchema),
  paperwork: z.exactOptional(
    z.array(paperworkSchema).refine(...atMostOnce<Paperwork>(({ paper }) => paper, 'A paper stands once.')),
  ),
});
export type ShipPapers = z.infer<typeof shipPapersSchema>;
