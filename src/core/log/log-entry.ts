import * as z from 'zod';
import { aboardSchema } from '../boat/aboard.ts';
import { howSchema } from '../boat/measure.ts';
import { photoSchema } from '../boat/photo.ts';

const entryIdSchema = z
  .string()
  .regex(/^[a-z0-9]{8,40}$/, 'An entry has an id of 8 to 40 small letters and digits, made where it was written.');
/** By the clock of whoever wrote it, in UTC. */
const momentSchema = z
  .string()
  .regex(
    /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])T([01]\d|2[0-3]):[0-5]\d:[0-5]\d(\.\d{3})?Z$/,
    'A moment is written in UTC, for example 2027-03-31T09:30:00Z.',
  );
const thingSchema = z.string().min(1).max(300);
const noteSchema = z.string().min(1).max(400);

const common = { id: entryIdSchema, at: momentSchema, by: z.exactOptional(z.string().min(1).max(120)) };

/** What was found at one test of the plan: a number in the unit of that test, or whether it was as it should be. */
const readingEntrySchema = z
  .strictObject({
    ...common,
    kind: z.literal('reading'),
    test: thingSchema,
    value: z.exactOptional(z.number().min(-1e12).max(1e12).meta({ unit: 'that of the test' })),
    right: z.exactOptional(z.boolean()),
    note: z.exactOptional(noteSchema),
  })
  .refine(({ value, right }) => (value === undefined) !== (right === undefined), {
    message: 'A reading is either a value, or right or not.',
  });

/** Something that was to be done is done, or is no longer. */
const tickEntrySchema = z.strictObject({ ...common, kind: z.literal('tick'), of: thingSchema, done: z.boolean() });

const noteEntrySchema = z.strictObject({
  ...common,
  kind: z.literal('note'),
  about: z.array(thingSchema).max(20),
  text: z.string().min(1).max(2000),
});

/** A photo of a thing aboard; the picture itself lies beside the boat file, as hers do. */
const photoEntrySchema = z.strictObject({
  ...common,
  kind: z.literal('photo'),
  of: thingSchema,
  shows: photoSchema.shape.shows,
  picture: photoSchema.shape.picture,
});

/** A length found aboard: of a way, or of the tail by which a unit reaches its place. */
const measureEntrySchema = z.strictObject({
  ...common,
  kind: z.literal('measure'),
  of: thingSchema,
  valueM: z.number().min(0).max(1000).meta({ unit: 'm' }),
  how: howSchema,
});

/** Somebody stood there: a place or a way is so; a line was pulled through the way; or it is not as the file says. */
const seenEntrySchema = z.strictObject({
  ...common,
  kind: z.literal('seen'),
  of: thingSchema,
  is: z.enum(['so', 'pulled', 'not']),
});

/** What was read off a unit as it hangs aboard. */
const aboardEntrySchema = z
  .strictObject({
    ...common,
    kind: z.literal('aboard'),
    of: thingSchema,
    serial: aboardSchema.shape.serial,
    software: aboardSchema.shape.software,
  })
  .refine(({ serial, software }) => serial !== undefined || software !== undefined, {
    message: 'What was read off a unit is its serial number, its software, or both.',
  });

/** An entry made by mistake; both stay in the file. */
const withdrawnEntrySchema = z.strictObject({ ...common, kind: z.literal('withdrawn'), entry: entryIdSchema });

/** One line of the log beside a boat file: what was found, ticked or noted aboard. Lines are only ever added. */
export const logEntrySchema = z.discriminatedUnion('kind', [
  readingEntrySchema,
  tickEntrySchema,
  noteEntrySchema,
  photoEntrySchema,
  measureEntrySchema,
  seenEntrySchema,
  aboardEntrySchema,
  withdrawnEntrySchema,
]);
export type LogEntry = z.infer<typeof logEntrySchema>;
export type EntryOf<Kind extends LogEntry['kind']> = Extract<LogEntry, { readonly kind: Kind }>;
