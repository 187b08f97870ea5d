import * as z from 'zod';
import { readingSchema } from './boat/sheet.ts';

const id = z.string();
const money = z.int().meta({ unit: 'hundredths of the currency' });
const editsSchema = z.array(z.strictObject({ edit: z.string(), params: z.record(z.string(), z.unknown()) }));
const neededSchema = z.strictObject({ reading: readingSchema, instance: z.exactOptional(z.int()), at: id });

/** Readings that must arrive and cannot all, in the smallest set that shows it, and the ports or buses there is too little of. */
const clashingNeedsSchema = z.strictObject({
  needs: z.array(neededSchema),
  over: z.array(id),
  says: z.string(),
});
export type ClashingNeeds = z.infer<typeof clashingNeedsSchema>;

/** Joins that the file does not say and the plan was made with: the cheapest that bring what is needed. */
export const proposalSchema = z.strictObject({
  /** each with the edits that take it into the file, and with those that forbid it */
  joins: z.array(z.strictObject({ join: id, cost: money, edits: editsSchema, forbids: editsSchema })),
  /** cable, and tees on a bus */
  cost: money,
  /** a cost below which nothing brings as much */
  bound: money,
  proven: z.boolean(),
  clashes: z.array(clashingNeedsSchema),
});
export type ProposalEntry = z.infer<typeof proposalSchema>;

/** One way to wire the boat from her old units on: by keeping them or by putting others in their place. */
export const wiringSchema = z.strictObject({
  id,
  says: z.string(),
  /** units of old kit that are kept, and those replaced, each with the sheet that comes */
  keeps: z.array(id),
  replaces: z.array(z.strictObject({ kit: id, sheet: id, cost: money })),
  /** what has to be bought between them, and where it would stand */
  buys: z.array(z.strictObject({ sheet: id, name: z.string(), place: id, cost: money })),
  joins: z.int(),
  /** everything that has to be bought for it: units, cable, tees */
  cost: money,
  bound: money,
  proven: z.boolean(),
  /** needs that it leaves unmet */
  misses: z.array(z.strictObject({ ...neededSchema.shape, must: z.boolean() })),
});
export type WiringEntry = z.infer<typeof wiringSchema>;
