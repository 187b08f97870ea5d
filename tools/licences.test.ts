import { fileURLToPath } from 'node:url';
import { build, type Plugin, type Rolldown } from 'vite';
import { expect, test } from 'vitest';
import { licences } from './licences.ts';

const library = fileURLToPath(new URL('../node_modules/lean-qr/index.mjs', import.meta.url));
const ours = 'export const depthM = 2;';
const theirs = `export { generate } from ${JSON.stringify(library)};`;

/** What stands in licences.md where a text is built with a plugin; undefined where it writes none. */
const writtenBy = async (plugin: Plugin, code: string): Promise<string | undefined> => {
  const own: Plugin = {
    name: 'own',
    resolveId: (id) => (id === 'own' ? id : undefined),
    load: (id) => (id === 'own' ? code : null),
  };
  const built = await build({
    configFile: false,
    logLevel: 'silent',
    plugins: [plugin, own],
    build: { write: false, rolldownOptions: { input: 'own', preserveEntrySignatures: 'strict' } },
  });
  const files = (built as Rolldown.RolldownOutput).output;
  const found = files.find(({ fileName }) => fileName === 'licences.md');
  return found?.type === 'asset' ? String(found.source) : undefined;
};

test('a library that is built in stands with its licence, and its text', async () => {
  const text = await writtenBy(licences().page(), theirs);
  expect(text).toMatch(/^## lean-qr \d+\.\d+\.\d+\n\nMIT\n/m);
  expect(text).toContain('Permission is hereby granted');
});

test('where none is built in there is no list', async () => {
  expect(await writtenBy(licences().page(), ours)).toBeUndefined();
});

test('what only a worker has is told to the list of its page', async () => {
  const { page, workers } = licences();
  expect(await writtenBy(workers(), theirs)).toBeUndefined();
  expect(await writtenBy(page(), ours)).toContain('## lean-qr');
});
