import { writeFileSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { fieldTableText } from './import-fields.ts';
import { type Definition, databaseHeader, pgnDatabase } from './pgn-database.ts';

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

/** The text of src/core/facts/generated/pgns.ts: the standard messages of the database, sorted by number. */
export const pgnTableText = (): string => {
  const database = pgnDatabase();
  const formsOf = new Map<number, Definition[]>();
  for (const definition of database.PGNs) {
    if (definition.Fallback === true || isMakerSpecific(definition.PGN)) continue;
    formsOf.set(definition.PGN, [...(formsOf.get(definition.PGN) ?? []), definition]);
  }
  const sorted = [...formsOf].sort(([a], [b]) => a - b);
  return [
    ...databaseHeader(database),
    '/** Number, packet (s single, f fast, t transport), bytes (fixed, else the least), interval ms or 0, priority or -1, name. */',
    "export const pgnRows: readonly (readonly [number, 's' | 'f' | 't', number, number, number, string])[] = [",
    ...sorted.map(([, forms]) => rowOf(forms)),
    '];',
    '',
  ].join('\n');
};

const generated = (name: string): string =>
  fileURLToPath(new URL(`../src/core/facts/generated/${name}`, import.meta.url));

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) {
  writeFileSync(generated('pgns.ts'), pgnTableText());
  writeFileSync(generated('message-fields.ts'), fieldTableText());
}
