import * as z from 'zod';
import { readingSchema } from './boat/sheet.ts';

// The part of a plan that tells what is measured and tried at the dock, in the order in which it is worked through.
const id = z.string();

const testGroups = ['bus', 'feed', 'pair', 'hull', 'reading', 'source', 'trial', 'noise'] as const;

/** What is done. Of a bus: ohm between its data wires, each of them against minus, plus and shield, and so on as words tell it. */
export const testKinds = [
  'data-ohm',
  'lifted-ohm',
  'high-to-minus',
  'high-to-plus',
  'high-to-shield',
  'low-to-minus',
  'low-to-plus',
  'low-to-shield',
  'shield-to-ground',
  'feed-polarity',
  'bus-volts',
  'bus-dead',
  'high-idle',
  'low-idle',
  'devices',
  'errors',
  'feed-volts',
  'pair-idle',
  'pair-heard',
  'plus-to-hull',
  'minus-to-hull',
  'anode',
  'shown',
  'pulled',
  'tried',
  'noise',
] as const;
export type TestKind = (typeof testKinds)[number];

export const testSpots = ['end-1', 'middle', 'end-2', 'feed', 'far'] as const;
export type TestSpot = (typeof testSpots)[number];

const windowSchema = z.strictObject({ least: z.exactOptional(z.number()), most: z.exactOptional(z.number()) });
export type TestWindow = z.infer<typeof windowSchema>;

/**
 * One test. `right`: what a sound boat reads by this plan; `passes`: what is let pass, in doubt where it is not right. Both are
 * in `unit`. `under`: how far it may lie under the reading of another test, by the plan and at the most. `like`: the test whose
 * reading it is held beside, where nothing says what it should be.
 */
export const testEntrySchema = z.strictObject({
  id,
  group: z.enum(testGroups),
  test: z.enum(testKinds),
  kind: z.enum(['number', 'yes-no', 'count']),
  unit: z.exactOptional(z.enum(['ohm', 'V', 'devices', 'errors'])),
  /** buses, lines, units, panels it tells of */
  about: z.array(id),
  place: z.exactOptional(id),
  spot: z.exactOptional(z.enum(testSpots)),
  reading: z.exactOptional(readingSchema),
  instance: z.exactOptional(z.int()),
  /** what is switched or tried, by its name in facts; of a hull: what is on */
  what: z.exactOptional(z.string()),
  power: z.enum(['off', 'on']),
  expect: z.exactOptional(z.number()),
  right: z.exactOptional(windowSchema),
  passes: z.exactOptional(windowSchema),
  under: z.exactOptional(
    z.strictObject({
      test: id,
      rightV: z.exactOptional(z.number().meta({ unit: 'V' })),
      mostV: z.exactOptional(z.number().meta({ unit: 'V' })),
    }),
  ),
  like: z.exactOptional(id),
  source: id,
  /** tests that come before it, because it says nothing, or harms, without them */
  after: z.exactOptional(z.array(id)),
});
export type TestEntry = z.infer<typeof testEntrySchema>;

/** What a plan says of tests at the dock. */
export const testsEntriesSchema = { tests: z.array(testEntrySchema) };
