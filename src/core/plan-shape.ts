import * as z from 'zod';
import { blackoutEntriesSchema } from './blackouts-shape.ts';
import { joinKinds, lineKindSchema, orderSchema } from './boat/boat-schema.ts';
import { coaxKindSchema } from './boat/coax.ts';
import { readingSchema, referenceSchema } from './boat/sheet.ts';
import { type BusEntry, busEntrySchema, mendSchema } from './buses-shape.ts';
import { cureSchema } from './cure-shape.ts';
import { drivesEntriesSchema } from './drives-shape.ts';
import { energyEntriesSchema } from './energy-shape.ts';
import { shoppingKinds } from './facts/shopping-kinds.ts';
import { fitsEntriesSchema } from './fits-shape.ts';
import { lightingEntriesSchema } from './lighting-shape.ts';
import { panelsEntriesSchema } from './panels-shape.ts';
import { phasesSchema } from './phases-shape.ts';
import { powerEntriesSchema } from './power-shape.ts';
import { proposalSchema, wiringSchema } from './proposal-shape.ts';
import { remoteEntriesSchema } from './remote-shape.ts';
import { settingsSheetSchema } from './settings-sheet-shape.ts';
import { fittingEntriesSchema } from './sites-shape.ts';
import { sourcesEntriesSchema } from './sources-shape.ts';
import { strayEntriesSchema } from './stray-shape.ts';
import { testsEntriesSchema } from './tests-shape.ts';
import { trafficEntriesSchema } from './traffic-shape.ts';
import { mastEntrySchema, networkEntrySchema, passageEntrySchema, wayEntrySchema } from './ways-shape.ts';
import { workEntriesSchema } from './work-shape.ts';

export type { BusEntry, BusMend, LayoutStatus } from './buses-shape.ts';
export type { Cure } from './cure-shape.ts';
export type { EnergyDay } from './energy-shape.ts';
export type { FeedEntry } from './power-shape.ts';
export type { MastEntry, NetworkEntry, PassageEntry, WayEntry } from './ways-shape.ts';

/**
 * The shape of a plan, as `plan --json` prints it. Lengths in metres, figures rounded to 1e-6 at the edge.
 * Lists are sorted by every id field in order of writing, so equal input gives equal bytes.
 */
const id = z.string();
const metres = z.number().meta({ unit: 'm' });
const money = z.int().meta({ unit: 'hundredths of the currency' });

export const levels = ['danger', 'fault', 'doubt', 'advice'] as const;
export const levelSchema = z.enum(levels);
export type Level = z.infer<typeof levelSchema>;

export const findingSchema = z.strictObject({
  id,
  rule: id,
  level: levelSchema,
  about: z.array(id),
  says: z.string(),
  measured: z.exactOptional(z.strictObject({ value: z.number(), unit: z.string() })),
  limit: z.exactOptional(z.strictObject({ value: z.number(), unit: z.string(), source: z.string() })),
  /** what to do, in words; with `cures` the first of them */
  cure: z.exactOptional(z.string()),
  /** what to do, as edits to choose from */
  cures: z.exactOptional(z.array(cureSchema)),
  /** why the owner lives with it; the finding itself stays */
  accepted: z.exactOptional(z.string()),
});
export type Finding = z.infer<typeof findingSchema>;

export const joinEntrySchema = z.strictObject({
  id,
  kind: joinKinds,
  bus: z.exactOptional(id),
  members: z.array(z.strictObject({ kit: id, port: id, as: z.enum(['talk', 'listen', 'both']) })),
  from: z.enum(['file', 'proposed']),
  lines: z.array(id),
});
export type JoinEntry = z.infer<typeof joinEntrySchema>;
/** A join before its lines are known: what rooms that follow messages from port to port need of it. */
export type StandingJoin = Omit<JoinEntry, 'lines'>;

/** What keeps a reading from a screen: the kind of break and the two ports (or the one) between which it lies. */
export const brokenLinkSchema = z.strictObject({
  broken: z.enum([
    'no-source',
    'source-not-aboard',
    'source-leaves',
    'comes-later',
    'not-joined',
    'dialect-differs',
    'generation-unknown',
    'line-differs',
    'direction-differs',
    'baud-differs',
    'not-heard',
    'not-carried',
    'wrong-instance',
    'wrong-reference',
    'no-offset',
    'too-slow',
  ]),
  from: z.exactOptional(id),
  to: z.exactOptional(id),
});
export type BrokenLink = z.infer<typeof brokenLinkSchema>;

/** How a reading is written as it leaves a port: the message, or the bare reading where there is neither PGN nor sentence. */
const formSchema = z.strictObject({
  pgn: z.exactOptional(z.int()),
  sentence: z.exactOptional(z.string()),
  instance: z.exactOptional(z.int()),
  everyMs: z.exactOptional(z.number().meta({ unit: 'ms' })),
  reference: z.exactOptional(referenceSchema),
});
export type Form = z.infer<typeof formSchema>;
export const readingEntrySchema = z.strictObject({
  reading: readingSchema,
  instance: z.exactOptional(z.int()),
  at: id,
  must: z.boolean(),
  arrives: z.boolean(),
  rests: z.exactOptional(z.enum(['typical', 'manual', 'recording', 'proved'])),
  by: z.array(id),
  /** the reading's form at each port of `by`, where it arrives */
  forms: z.exactOptional(z.array(formSchema)),
  backups: z.array(z.array(id)),
  /** whether any unit had this reading before the refit */
  seenBefore: z.exactOptional(z.boolean()),
  whyNot: z.exactOptional(z.strictObject({ link: brokenLinkSchema, says: z.string(), cures: z.array(cureSchema) })),
});
export type ReadingEntry = z.infer<typeof readingEntrySchema>;

/** A reading that a unit had before the refit, and whether any unit (for a screen: any screen) has it when it is done. */
const seenEntrySchema = z.strictObject({
  reading: readingSchema,
  instance: z.exactOptional(z.int()),
  at: id,
  by: z.array(id),
  after: z.boolean(),
});
export type SeenEntry = z.infer<typeof seenEntrySchema>;

const wireEndSchema = z.strictObject({
  /** `kit.plug` */
  end: id,
  port: id,
  role: z.enum(['A', 'B', 'signal', 'common']),
  /** as the maker marks the wire; absent where the sheet does not say */
  label: z.exactOptional(z.string()),
  colour: z.exactOptional(z.string()),
});

/** One wire of a talker and where it goes; without `to` it is left open and insulated. */
export const wireEntrySchema = z.strictObject({
  from: wireEndSchema,
  to: z.exactOptional(wireEndSchema),
});
export type WireEntry = z.infer<typeof wireEntrySchema>;
/** One cable a line is made of: ready-made as sold, or made up aboard; its item of the shopping list, absent where none is bought. */
const linePieceSchema = z.strictObject({ lengthM: metres, made: z.boolean(), item: z.exactOptional(id) });

export const lineEntrySchema = z.strictObject({
  id,
  label: z.exactOptional(z.string()),
  /** the label it gets when labels are handed out next; absent where it has one */
  nextLabel: z.exactOptional(z.string()),
  kind: lineKindSchema,
  from: z.string(),
  to: z.string(),
  /** places it passes, first to last, and the ways between them */
  places: z.array(id),
  ways: z.array(id),
  lengthM: metres,
  longestM: metres,
  /** true where a way on the route or a tail is only guessed */
  guessed: z.boolean(),
  /** of a new coax between a radio and its antenna: the kind it is made of */
  coax: z.exactOptional(coaxKindSchema),
  /** how the wires of a 0183 pair or a maker's own wire are joined */
  wires: z.exactOptional(z.array(wireEntrySchema)),
  /** how far its route is settled by a person; absent where the plan chose it */
  pinned: z.exactOptional(z.enum(['fixed', 'bought', 'fitted'])),
  /** the cables aboard that make this line, from its first end to its second */
  kept: z.exactOptional(z.array(id)),
  /** the shortest route that leaves out one of its ways, its length as the line’s own; absent where it can go one way only */
  other: z.exactOptional(z.strictObject({ places: z.array(id), ways: z.array(id), lengthM: metres, longestM: metres })),
  /** places where it needs a drip loop; absent where it needs none */
  dripLoops: z.exactOptional(z.array(id)),
  /** what it is made of, longest piece first; absent where it lies aboard already or comes with a unit */
  pieces: z.exactOptional(z.array(linePieceSchema)),
});
export type LineEntry = z.infer<typeof lineEntrySchema>;

/** A line that is wanted and has no route: no way that allows it leads from one end to the other. `serves`: its joins, circuit or bus. */
export const gapEntrySchema = z.strictObject({
  kind: lineKindSchema,
  from: z.string(),
  to: z.string(),
  serves: z.array(id),
});

/**
 * One thing to buy. `each` is the price of one, or of a metre where it is sold by the metre; absent where none is known.
 * `for`: the lines, units, buses and ways it is for; `why` says it in words. An item is sure, or says what could change it.
 */
export const shoppingEntrySchema = z.strictObject({
  id,
  item: z.string(),
  kind: z.enum(shoppingKinds),
  count: z.number(),
  by: z.enum(['piece', 'metre']),
  each: z.exactOptional(money),
  for: z.array(id),
  why: z.string(),
  sure: z.boolean(),
  couldChangeIf: z.exactOptional(z.string()),
  /** where it stands, as the boat file says */
  order: z.exactOptional(orderSchema),
});
export type ShoppingEntry = z.infer<typeof shoppingEntrySchema>;

/**
 * A length to tape (`tape`), or a way to prove before cable is bought for it (`prove`). `about` is the way or the unit whose
 * tail it is. `atStake`: what the order costs more with the answer that costs more, in hundredths of the currency.
 */
export const tapeEntrySchema = z.strictObject({
  id,
  does: z.enum(['tape', 'prove']),
  about: id,
  lines: z.array(id),
  how: z.array(z.enum(['tape-it', 'pull-a-messenger', 'measure-the-bore', 'count-what-is-in'])),
  atStake: money,
  /** the length at its shortest and its longest, and what the cable for its lines costs then, with the layout held */
  shortest: z.exactOptional(z.strictObject({ lengthM: metres, cost: money })),
  longest: z.exactOptional(z.strictObject({ lengthM: metres, cost: money })),
  /** with the way shut: what the cable for its lines costs by another way, the lines that have none, limits that break */
  blocked: z.exactOptional(z.strictObject({ cost: money, noOtherWay: z.array(id), breaks: z.array(z.string()) })),
});
export type TapeEntry = z.infer<typeof tapeEntrySchema>;

/** The plan before the rules have read it. */
export const planDraftSchema = z.strictObject({
  boat: z.string(),
  program: z.string(),
  phase: z.int(),
  joins: z.array(joinEntrySchema),
  /** absent where the joins of the file bring all that is needed, or nothing would help */
  proposal: z.exactOptional(proposalSchema),
  readings: z.array(readingEntrySchema),
  before: z.array(seenEntrySchema),
  buses: z.array(busEntrySchema),
  /** buses with units that not even a trunk can be laid for; absent where there are none, or nobody looked why */
  unlaid: z.exactOptional(z.array(z.strictObject({ id, mend: mendSchema }))),
  lines: z.array(lineEntrySchema),
  gaps: z.array(gapEntrySchema),
  shopping: z.array(shoppingEntrySchema),
  tape: z.array(tapeEntrySchema),
  ...strayEntriesSchema,
  ...fitsEntriesSchema,
  ...fittingEntriesSchema,
  ways: z.array(wayEntrySchema),
  passages: z.array(passageEntrySchema),
  masts: z.array(mastEntrySchema),
  networks: z.array(networkEntrySchema),
  ...powerEntriesSchema,
  ...panelsEntriesSchema,
  ...energyEntriesSchema,
  ...drivesEntriesSchema,
  ...sourcesEntriesSchema,
  ...settingsSheetSchema,
  ...blackoutEntriesSchema,
  ...trafficEntriesSchema,
  /** absent where she is refitted in one go, or nobody looked */
  phases: z.exactOptional(phasesSchema),
  ...remoteEntriesSchema,
  ...lightingEntriesSchema,
  ...testsEntriesSchema,
  ...workEntriesSchema,
});
export type PlanDraft = z.infer<typeof planDraftSchema>;

/** What of a plan hangs on what is aboard and where it lies alone: not on what is needed where, chosen, typed in, ordered or accepted. */
export interface LaidPlan
  extends Pick<
    PlanDraft,
    | 'phase'
    | 'joins'
    | 'lines'
    | 'gaps'
    | 'tape'
    | 'ways'
    | 'passages'
    | 'masts'
    | 'networks'
    | keyof typeof strayEntriesSchema
    | keyof typeof fitsEntriesSchema
    | keyof typeof fittingEntriesSchema
    | keyof typeof powerEntriesSchema
    | keyof typeof panelsEntriesSchema
    | keyof typeof energyEntriesSchema
    | keyof typeof drivesEntriesSchema
    | keyof typeof trafficEntriesSchema
  > {
  readonly buses: readonly Omit<BusEntry, 'mend'>[];
}

export const planSchema = planDraftSchema
  .extend({
    findings: z.array(findingSchema),
    /** ways to wire the boat with old kit kept or replaced; only where somebody asked for them */
    wirings: z.exactOptional(z.array(wiringSchema)),
  })
  .meta({ title: 'Fairlead plan', description: 'Everything computed from one boat file.' });
export type Plan = z.infer<typeof planSchema>;
