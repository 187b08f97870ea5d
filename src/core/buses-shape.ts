import * as z from 'zod';
import { gradeSchema } from './boat/boat-schema.ts';
import { cureSchema } from './cure-shape.ts';
import { layoutLimits } from './facts/layout-limits.ts';

/** The buses of a plan: their layouts, what each costs and could cost, what keeps one from a layout. */
const id = z.string();
const metres = z.number().meta({ unit: 'm' });
const volts = z.number().meta({ unit: 'V' });
const percent = z.number().meta({ unit: '%' });
const milliseconds = z.number().meta({ unit: 'ms' });

const walkStepSchema = z.strictObject({ place: id, via: z.exactOptional(id), tees: z.array(z.string()) });

const layoutStatusSchema = z.enum(['proven', 'gap', 'stopped', 'heuristic', 'pinned', 'infeasible']);
export type LayoutStatus = z.infer<typeof layoutStatusSchema>;

/** Thousandths of a hundredth of the currency, as layouts are reckoned in. */
const fineCost = z.int().meta({ unit: 'thousandths of a hundredth of the currency' });

const pricePartSchema = z.strictObject({
  part: z.enum(['trunk', 'drops', 'tees', 'terminators', 'feed', 'work']),
  cost: fineCost,
  count: z.exactOptional(z.int()),
  lengthM: z.exactOptional(metres),
});

/** Where the tee of a device stands, and the nearest other places of the trunk: what each would cost more, and what it would break. */
const teeEntrySchema = z.strictObject({
  port: id,
  place: id,
  dropM: metres,
  others: z.array(
    z.strictObject({ place: id, step: z.int(), dropM: metres, costMore: fineCost, breaks: z.array(z.string()) }),
  ),
});

const money = z.int().meta({ unit: 'hundredths of the currency' });

/** The cheapest layout whose trunk takes other ways, or is of another grade; `proven` where nothing lies between the two. */
const nextBestSchema = z.strictObject({
  grade: gradeSchema,
  cost: fineCost,
  proven: z.boolean(),
  price: z.array(pricePartSchema),
  /** trunk and drops in the pieces one can buy */
  cableCost: money,
  walk: z.array(walkStepSchema),
});

/**
 * One limit of a clash: what it would come to if the others were kept, beside what is allowed, absent where the limit is no
 * figure or no layout shows it. `at`: the port it comes to that at, or the places.
 */
const clashingLimitSchema = z.strictObject({
  limit: z.enum(layoutLimits),
  at: z.array(id),
  would: z.exactOptional(z.number()),
  allowed: z.exactOptional(z.number()),
  unit: z.exactOptional(z.enum(['m', 'A', 'V', 'units'])),
});

/** What keeps a bus from a layout, in words and as smallest sets of limits, and changes that were tried and would give it one. */
export const mendSchema = z.strictObject({
  says: z.string(),
  clashes: z.array(z.array(clashingLimitSchema)),
  cures: z.array(cureSchema),
});
export type BusMend = z.infer<typeof mendSchema>;

export const busEntrySchema = z.strictObject({
  id,
  protocol: z.literal('nmea2000'),
  grade: gradeSchema,
  /** trunk as entered, and with every doubt against it */
  lengthM: metres,
  longestM: metres,
  /** drops with every doubt against them, on the piece bought */
  longestDropM: metres,
  dropsM: metres,
  /** each drop as entered, and on the piece bought */
  drops: z.array(z.strictObject({ port: id, lengthM: metres, boughtM: metres })),
  /** farthest two points of the network along the cable, drops included */
  farthestM: metres,
  devices: z.int(),
  len: z.int(),
  feedPlace: z.exactOptional(id),
  ends: z.tuple([id, id]),
  walk: z.array(walkStepSchema),
  /** volts at the feed tee's source, before the feed lead, with the bank at its lowest */
  supplyV: z.exactOptional(volts),
  volts: z.array(z.strictObject({ port: id, lowestV: volts, dropV: volts })),
  /** for each step of the walk: trunk as entered up to it, and the load its stretch carries on from the step before */
  along: z.exactOptional(z.array(z.strictObject({ alongM: metres, carriesLen: z.exactOptional(z.int()) }))),
  /** what each side of the trunk carries from the feed: its load, and its moment, current x distance added up */
  legs: z.exactOptional(
    z.array(
      z.strictObject({
        towards: id,
        len: z.int(),
        amps: z.number().meta({ unit: 'A' }),
        ampMetres: z.number().meta({ unit: 'A m' }),
      }),
    ),
  ),
  /** the largest fuse that is not above what the trunk carries */
  fuseA: z.exactOptional(z.number().meta({ unit: 'A' })),
  /** what volts, lost volts and load of the trunk are held against: volts of the neediest unit; load of one side of the feed */
  held: z.exactOptional(
    z.strictObject({ leastV: volts, lostV: z.exactOptional(volts), legLen: z.exactOptional(z.int()) }),
  ),
  /** the published rule of thumb for the same bus, beside the exact solve */
  thumbDropV: z.exactOptional(volts),
  /** how full the bus is, as measured on real buses against the worst case, and at the worst */
  traffic: z.strictObject({
    averagePct: percent,
    worstPct: percent,
    /** longest waits of what is sent of itself; a wait that nothing bounds is absent, steering also where nothing of it is sent */
    wait: z.exactOptional(
      z.strictObject({
        steeringMs: z.exactOptional(milliseconds),
        anyMs: z.exactOptional(milliseconds),
        anyFedSinglyMs: z.exactOptional(milliseconds),
      }),
    ),
  }),
  /** what the layout costs, in its parts */
  price: z.exactOptional(z.array(pricePartSchema)),
  /** trunk and drops in the pieces one can buy; absent where the layout was not searched for */
  cableCost: z.exactOptional(money),
  /** absent where no other layout holds, or none was searched for */
  nextBest: z.exactOptional(nextBestSchema),
  tees: z.exactOptional(z.array(teeEntrySchema)),
  /** where no layout keeps every limit */
  mend: z.exactOptional(mendSchema),
  layout: z.strictObject({
    hash: z.string(),
    cost: z.int(),
    bound: z.int(),
    status: layoutStatusSchema,
    work: z.int(),
    /** limits of the layout problem that this layout breaks, in words; empty when it holds */
    broken: z.array(z.string()),
  }),
});
export type BusEntry = z.infer<typeof busEntrySchema>;
