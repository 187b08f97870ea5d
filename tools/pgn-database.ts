import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import * as z from 'zod';

const fieldSchema = z.object({
  Id: z.string(),
  FieldType: z.string(),
  BitOffset: z.int().optional(),
  BitLength: z.int().optional(),
  Signed: z.boolean().optional(),
  Resolution: z.number().optional(),
  Offset: z.number().optional(),
  RangeMin: z.number().optional(),
  RangeMax: z.number().optional(),
  Unit: z.string().optional(),
  LookupEnumeration: z.string().optional(),
});

const definitionSchema = z.object({
  PGN: z.int(),
  Description: z.string(),
  Type: z.enum(['Single', 'Fast', 'ISO', 'Mixed']),
  Fallback: z.boolean().optional(),
  Length: z.int().optional(),
  MinLength: z.int().optional(),
  TransmissionInterval: z.int().optional(),
  Priority: z.int().optional(),
  Fields: z.array(fieldSchema),
});

const databaseSchema = z.object({
  Version: z.string(),
  Copyright: z.string(),
  PGNs: z.array(definitionSchema),
  LookupEnumerations: z.array(
    z.object({ Name: z.string(), EnumValues: z.array(z.object({ Name: z.string(), Value: z.int() })) }),
  ),
});

/** One message of the open database, as far as the importers read it. */
export type Definition = z.infer<typeof definitionSchema>;
/** One field of it. */
export type Field = z.infer<typeof fieldSchema>;

/** The open database of messages, as the installed package has it. */
export const pgnDatabase = (): z.infer<typeof databaseSchema> => {
  const require = createRequire(import.meta.url);
  const entry = require.resolve('@canboat/ts-pgns');
  return databaseSchema.parse(JSON.parse(readFileSync(join(dirname(entry), '..', 'canboat.json'), 'utf8')));
};

/** The lines that head every file made from the database: who made it, and its licence. */
export const databaseHeader = ({ Version, Copyright }: { Version: string; Copyright: string }): string[] => [
  '// Made by tools/import-pgns.ts: change that, not this.',
  `// Selected and reshaped from the CANboat PGN database ${Version}, through the npm package @canboat/ts-pgns.`,
  '//',
  ...Copyright.trim()
    .split('\n')
    .map((line) => `// ${line}`.trimEnd()),
  '',
];
