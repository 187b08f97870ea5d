import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import * as z from 'zod';

const definitionSchema = z.object({
  PGN: z.int(),
  Description: z.string(),
  Type: z.enum(['Single', 'Fast', 'ISO', 'Mixed']),
  Fallback: z.boolean().optional(),
  Length: z.int().optional(),
  MinLength: z.int().optional(),
  TransmissionInterval: z.int().optional(),
  Priority: z.int().optional(),
});
type Definition = z.infer<typeof definitionSchema>;

const databaseSchema = z.object({ Version: z.string(), Copyright: z.string(), PGNs: z.array(definitionSchema) });

/** Messages the database splits into several forms: one plain name for all of them. */
const namesOfSplitMessages = new Map([
  [60_416, 'ISO Transport Protocol, Connection Management'],
  [126_208, 'NMEA group function'],
  [129_808, 'DSC Call Information'],
]);

/** Maker-specific ranges are described by rule, not by name: the names there are makers' names. */
const isMakerSpecific = (pgn: number): boolean =>
  pgn === 61_184 || pgn === 126_720 || pgn >= 130_816 || (pgn >= 65_280 && pgn <= 65_535);

const letterOf = { Single: 's', Fast: 'f', ISO: 't' } as const;

/** One row: number, packet letter, bytes (fixed, else the least), interval in ms or 0, priority or -1, name. */
const rowOf = (forms: readonly Definition[]): string => {
  const [first] = forms;
  if (first === undefined || first.Type === 'Mixed') throw new Error('A message without a definite form.');
  const priority = forms.find((form) => form.Priority !== undefined)?.Priority ?? -1;
  const name = namesOfSplitMessages.get(first.PGN) ?? first.Description;
  const columns = [
    first.PGN,
    letterOf[first.Type],
    first.Length ?? first.MinLength ?? 0,
    first.TransmissionInterval ?? 0,
    priority,
    name,
  ];
  return `  ${JSON.stringify(columns)},`;
};

const header = (version: string, copyright: string): string[] => [
  '// Made by tools/import-pgns.ts: change that, not this.',
  `// Selected and reshaped from the CANboat PGN database ${version}, through the npm package @canboat/ts-pgns.`,
  '//',
  ...copyright
    .trim()
    .split('\n')
    .map((line) => `// ${line}`.trimEnd()),
  '',
];

/** The text of src/core/facts/generated/pgns.ts: the standard messages of the database, sorted by number. */
export const pgnTableText = (): string => {
  const require = createRequire(import.meta.url);
  const entry = require.resolve('@canboat/ts-pgns');
  const database = databaseSchema.parse(JSON.parse(readFileSync(join(dirname(entry), '..', 'canboat.json'), 'utf8')));
  const formsOf = new Map<number, Definition[]>();
  for (const definition of database.PGNs) {
    if (definition.Fallback === true || isMakerSpecific(definition.PGN)) continue;
    formsOf.set(definition.PGN, [...(formsOf.get(definition.PGN) ?? []), definition]);
  }
  const sorted = [...formsOf].sort(([a], [b]) => a - b);
  return [
    ...header(database.Version, database.Copyright),
    '/** Number, packet (s single, f fast, t transport), bytes (fixed, else the least), interval ms or 0, priority or -1, name. */',
    "export const pgnRows: readonly (readonly [number, 's' | 'f' | 't', number, number, number, string])[] = [",
    ...sorted.map(([, forms]) => rowOf(forms)),
    '];',
    '',
  ].join('\n');
};

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) {
  writeFileSync(fileURLToPath(new URL('../src/core/facts/generated/pgns.ts', import.meta.url)), pgnTableText());
}
