import { spawnSync } from 'node:child_process';
import { rmSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';

const repository = resolve(import.meta.dirname, '..');
const bin = (name: string): string => join(repository, 'node_modules/.bin', name);
const coreFile = join(repository, 'src/core/boat/planted-fault.ts');

const run = (name: string, args: string[]): { status: number | null; text: string } => {
  const done = spawnSync(bin(name), args, { cwd: repository, encoding: 'utf8' });
  return { status: done.status, text: done.stdout + done.stderr };
};

afterEach(() => rmSync(coreFile, { force: true }));

describe('each net catches a planted fault', { timeout: 60_000 }, () => {
  test('the types of core know no DOM and no Node', () => {
    writeFileSync(
      coreFile,
      'export const width: number = document.body.clientWidth;\nexport const here = process.cwd();\n',
    );
    const { status, text } = run('tsc', ['-p', 'tsconfig.core.json']);
    expect(status).not.toBe(0);
    expect(text).toContain("Cannot find name 'document'");
    expect(text).toContain("Cannot find name 'process'");
  });

  test('the linter refuses an import of Node in core', () => {
    writeFileSync(coreFile, "import { readFileSync } from 'node:fs';\n\nexport const read = readFileSync;\n");
    const { status, text } = run('biome', ['lint', coreFile]);
    expect(status).not.toBe(0);
    expect(text).toContain('noRestrictedImports');
  });

  test('the linter refuses a promise nobody waits for', () => {
    writeFileSync(coreFile, 'export const late = async (): Promise<number> => 1;\nlate();\n');
    const { status, text } = run('biome', ['lint', coreFile]);
    expect(status).not.toBe(0);
    expect(text).toContain('noFloatingPromises');
  });

  test('the search for unused code finds an unused file', () => {
    writeFileSync(coreFile, 'export const nobodyUsesThis = 1;\n');
    const { status, text } = run('knip', ['--no-progress']);
    expect(status).not.toBe(0);
    expect(text).toContain('planted-fault.ts');
  });
});
