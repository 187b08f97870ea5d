import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { boatSchema } from '../src/core/boat/boat-schema.ts';
import { readBoat } from '../src/core/boat/read-boat.ts';
import { knownNames } from '../src/core/boat/schema-at.ts';
import { UserError } from '../src/core/boat/user-error.ts';
import { readingIds } from '../src/core/facts/reading-ids.ts';

const page = readFileSync(new URL('../docs/file-format.md', import.meta.url), 'utf8');
const block = (kind: string): string => new RegExp(`\`\`\`${kind}\n(.*?)\n\`\`\``, 's').exec(page)?.[1] ?? '';

test('the example of the page on the boat file is a good boat file', () => {
  expect(readBoat(block('json')).kit.map((unit) => unit.id)).toEqual(['display', 'gnss']);
});

test('the refusal shown on the page is what the program says of that slip', () => {
  const slip = block('json').replace(/"fate": "comes"(?!.*"fate")/s, '"fate": "stay"');
  let said = '';
  try {
    readBoat(slip);
  } catch (error) {
    if (!(error instanceof UserError)) throw error;
    said = error.text;
  }
  expect(said).toBe(block('text'));
});

test('the page names every part of a boat file and every reading', () => {
  const parts = knownNames(boatSchema).filter((name) => !['format', 'version', 'name'].includes(name));
  for (const part of parts) expect(page).toContain(`**${part}**`);
  expect(page).toContain(`\n${readingIds.join(', ')}.\n`);
});
