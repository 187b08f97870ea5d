import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boatDescriber } from './describe-boats.ts';
import { tempFolder } from './files/temp-folder.test-helper.ts';
import { findBoats } from './find-boats.ts';

const sandpiper = readFileSync(new URL('../../examples/sandpiper/sandpiper.boat.json', import.meta.url), 'utf8');
const texts = {
  good: sandpiper,
  renamed: sandpiper.replace(/"name": "[^"]*"/, '"name": "Another"'),
  newer: sandpiper.replace('"version": 1', '"version": 2'),
  damaged: sandpiper.slice(0, 300),
  gone: '',
};

test('a list that has seen the boats before says what one says that never has, whatever became of them meanwhile', async () => {
  const folder = tempFolder();
  const often = boatDescriber();
  const change = fc.tuple(fc.constantFrom('a', 'b', 'c'), fc.constantFrom(...Object.entries(texts)));
  await fc.assert(
    fc.asyncProperty(change, async ([id, [kind, text]]) => {
      const path = join(folder, `${id}.boat.json`);
      if (kind === 'gone') rmSync(path, { force: true });
      else writeFileSync(path, text);
      const boats = [...(await findBoats(folder)).values()];
      const list = await often(boats);
      expect(list).toEqual(await boatDescriber()(boats));
      if (kind === 'renamed') expect(list.find((boat) => boat.id === id)?.name).toBe('Another');
    }),
    { numRuns: 40 },
  );
});
