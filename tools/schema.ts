import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import * as z from 'zod';
import { boatSchema } from '../src/core/boat/boat-schema.ts';
import { hearsSchema, sendsSchema } from '../src/core/boat/sheet.ts';
import { planSchema } from '../src/core/plan-shape.ts';

const oneForm = ['pgn', 'sentence', 'reading'].map((name) => ({ required: [name] }));

/** A zod schema as JSON Schema 2020-12, with the check that zod makes in code: exactly one of pgn, sentence, reading. */
export const jsonSchemaOf = (schema: z.ZodType): Record<string, unknown> => ({
  ...z.toJSONSchema(schema, {
    io: 'input',
    override: ({ zodSchema, jsonSchema }) => {
      if (zodSchema === sendsSchema || zodSchema === hearsSchema) jsonSchema.oneOf = oneForm;
    },
  }),
});

const folder = new URL('../schema/', import.meta.url);
const files = [
  { name: 'boat.schema.json', schema: boatSchema },
  { name: 'plan.schema.json', schema: planSchema },
];

const readIfThere = (file: URL): string => {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return '';
  }
};

const main = (check: boolean): number => {
  let stale = 0;
  mkdirSync(folder, { recursive: true });
  for (const { name, schema } of files) {
    const fresh = `${JSON.stringify(jsonSchemaOf(schema), null, 2)}\n`;
    const file = new URL(name, folder);
    if (!check) writeFileSync(file, fresh);
    else if (readIfThere(file) !== fresh) {
      console.error(`schema/${name} is older than the program. Run npm run schema.`);
      stale += 1;
    }
  }
  return stale === 0 ? 0 : 1;
};

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  process.exitCode = main(process.argv.includes('--check'));
}
