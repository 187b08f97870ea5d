import * as z from 'zod';
import { readingSchema, referenceSchema } from './boat/sheet.ts';

// The part of a plan that tells which source counts where, what to set in each unit, and how pairs are wired.
const id = z.string();
const milliseconds = z.number().meta({ unit: 'ms' });

/** What one source has before the next: the first in which the two differ, in this order. */
export const betterBy = [
  'sensor',
  'reference',
  'offset',
  'rate',
  'converters',
  'rests',
  'number',
  'path',
  'name',
] as const;
export type Better = (typeof betterBy)[number];

/** One source of a reading at a screen, and how its reading is when it comes in. */
const sourceWaySchema = z.strictObject({
  /** `kit.port` at which it begins */
  from: id,
  by: z.array(id),
  /** units that turn it into another message on the way */
  converters: z.int(),
  rests: z.enum(['typical', 'manual', 'recording']),
  pgn: z.exactOptional(z.int()),
  sentence: z.exactOptional(z.string()),
  instance: z.exactOptional(z.int()),
  everyMs: z.exactOptional(milliseconds),
  reference: z.exactOptional(referenceSchema),
  withOffset: z.exactOptional(z.boolean()),
});
export type SourceWay = z.infer<typeof sourceWaySchema>;

/** A source that stands by. `shares`: units on its way that are on that of the first too, so that with one of them both fail. */
const backupSchema = sourceWaySchema.extend({
  because: z.exactOptional(z.enum(betterBy)),
  shares: z.exactOptional(z.array(id)),
});

/**
 * Where a reading comes from at one screen. `chosen`: there is no other (`only`), the screen takes all (`all`), the person
 * chose it here or for the boat, one is proposed for the whole boat, or it is the better one here. `because`: what it has
 * before the next.
 */
export const sourceEntrySchema = z.strictObject({
  reading: readingSchema,
  instance: z.exactOptional(z.int()),
  at: id,
  chosen: z.enum(['only', 'all', 'owner-here', 'owner-boat', 'boat', 'better']),
  because: z.exactOptional(z.enum(betterBy)),
  primary: sourceWaySchema,
  /** best first */
  backups: z.array(backupSchema),
});
export type SourceEntry = z.infer<typeof sourceEntrySchema>;

/** The number by which one engine, tank or battery is told from the others: as it is, and a free one where two clash or there is none. */
export const numberEntrySchema = z.strictObject({
  reading: readingSchema,
  /** `kit.port` at which it begins, and at which it first comes onto a bus: there it is set */
  source: id,
  port: id,
  now: z.exactOptional(z.int()),
  proposed: z.int(),
  /** `input`: each input of the unit has its own number, which is set in the unit and stands in its sheet */
  setBy: z.enum(['unit', 'input']),
  why: z.enum(['stands', 'clash', 'none', 'too-high', 'side']),
});
export type NumberEntry = z.infer<typeof numberEntrySchema>;

/** One thing to set in one unit. `at` and `readings`: which screens rely on it, for what; `asBackup` where only as a backup. */
export const settingEntrySchema = z.strictObject({
  id,
  kit: id,
  port: z.exactOptional(id),
  does: z.enum([
    'send',
    'stop',
    'stand-by',
    'speed',
    'choose',
    'number',
    'reference',
    'offset',
    'no-offset',
    'pass',
    'no-echo',
    'no-heading',
  ]),
  pgn: z.exactOptional(z.int()),
  sentence: z.exactOptional(z.string()),
  readings: z.array(readingSchema),
  at: z.array(id),
  asBackup: z.exactOptional(z.literal(true)),
  everyMs: z.exactOptional(milliseconds),
  /** the slowest that is enough for all who rely on it */
  enoughMs: z.exactOptional(milliseconds),
  baud: z.exactOptional(z.int().meta({ unit: 'bit/s' })),
  instance: z.exactOptional(z.int()),
  was: z.exactOptional(z.int()),
  reference: z.exactOptional(referenceSchema),
  /** of a choice: the source that counts, and those that stand by */
  source: z.exactOptional(id),
  backups: z.exactOptional(z.array(id)),
  /** of a turn: the port to which it passes */
  to: z.exactOptional(id),
  why: z.exactOptional(z.enum(['doubled', 'line-full', 'satellites'])),
});
export type SettingEntry = z.infer<typeof settingEntrySchema>;

const pairWireSchema = z.strictObject({
  role: id,
  label: z.exactOptional(z.string()),
  colour: z.exactOptional(z.string()),
});
export type PairWire = z.infer<typeof pairWireSchema>;

/** One talker and one listener on a pair or a single wire: what goes to what, what stays open, and where its shield is earthed. */
export const pairEntrySchema = z.strictObject({
  line: id,
  kind: z.enum(['nmea0183', 'single-wire']),
  talker: z.strictObject({ port: id, plug: id }),
  listener: z.strictObject({ port: id, plug: id }),
  baud: z.exactOptional(z.int().meta({ unit: 'bit/s' })),
  /** wire by wire; empty where a sheet does not say what line a port has, or the two cannot be joined bare */
  wires: z.array(z.strictObject({ from: pairWireSchema, to: z.exactOptional(pairWireSchema) })),
  /** wires of both plugs that nothing aboard is joined to: each is left open and insulated */
  open: z.array(z.strictObject({ plug: id, ...pairWireSchema.shape })),
  /** the one unit at which the shield is earthed */
  shieldAt: id,
});
export type PairEntry = z.infer<typeof pairEntrySchema>;

export const sourcesEntriesSchema = {
  sources: z.array(sourceEntrySchema),
  numbers: z.array(numberEntrySchema),
  settings: z.array(settingEntrySchema),
  pairs: z.array(pairEntrySchema),
};
