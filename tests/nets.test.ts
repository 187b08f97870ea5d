import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { looseWords } from './loose-words.ts';

const repository = resolve(import.meta.dirname, '..');
const bin = (name: string): string => join(repository, 'node_modules/.bin', name);
const coreFile = join(repository, 'src/core/boat/planted-fault.ts');

const run = (name: string, args: string[], cwd = repository): { status: number | null; text: string } => {
  const done = spawnSync(bin(name), args, { cwd, encoding: 'utf8' });
  return { status: done.status, text: done.stdout + done.stderr };
};

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'fairlead-nets-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true });
  rmSync(coreFile, { force: true });
});

describe('each net catches a planted fault', { timeout: 60_000 }, () => {
  test('the types of core know no DOM and no Node', () => {
    writeFileSync(
      coreFile,
      'export const width: number = document.body.clientWidth;\nexport const here = process.cwd();\n',
    );
    const core = join(repository, 'tsconfig.core.json');
    expect(run('tsc', ['-p', core, '--showConfig']).text).toContain('/src/core/boat/planted-fault.ts"');
    // the rest of core is sound, as another check says, and takes long to read
    const alone = join(folder, 'tsconfig.json');
    writeFileSync(alone, JSON.stringify({ extends: core, include: [], files: [coreFile] }));
    const { status, text } = run('tsc', ['-p', alone]);
    expect(status).not.toBe(0);
    expect(text).toContain("Cannot find name 'document'");
    expect(text).toContain("Cannot find name 'process'");
  });

  test('the linter refuses an import of Node in core, and a promise nobody waits for', () => {
    writeFileSync(
      coreFile,
      "import { readFileSync } from 'node:fs';\n\nexport const read = readFileSync;\nexport const late = async (): Promise<number> => 1;\nlate();\n",
    );
    const { status, text } = run('biome', ['lint', coreFile]);
    expect(status).not.toBe(0);
    expect(text).toContain('noRestrictedImports');
    expect(text).toContain('noFloatingPromises');
  });

  test('the search for unused code finds an unused file', () => {
    // a small tree with our own settings, as the whole one takes long to read
    for (const name of ['knip.json', 'package.json']) copyFileSync(join(repository, name), join(folder, name));
    const core = join(folder, 'src/core/boat');
    for (const room of [core, join(folder, 'src/library')]) mkdirSync(room, { recursive: true });
    writeFileSync(join(folder, 'src/library/fairlead.ts'), "export { used } from '../core/boat/used.ts';\n");
    writeFileSync(join(core, 'used.ts'), 'export const used = 1;\n');
    const knip = () => run('knip', ['--no-progress', '--include', 'files'], folder);
    expect(knip().status).toBe(0);
    writeFileSync(join(core, 'planted-fault.ts'), 'export const nobodyUsesThis = 1;\n');
    const { status, text } = knip();
    expect(status).not.toBe(0);
    expect(text).toContain('planted-fault.ts');
  });
});

describe('the net of loose words', () => {
  const caughtIn = (file: string, text: string): string[] => {
    const words = mkdtempSync(join(folder, 'words-'));
    writeFileSync(join(words, file), text);
    return looseWords(words).map(({ line, words: said }) => `${line} ${said}`);
  };

  test.each([
    ['text of an element', '<p>Nothing here {count}</p>', ['1 Nothing here']],
    ['a name that is read out', '<nav aria-label="Steps" className="course" />', ['1 Steps']],
    ['a name with a value in it', `<nav title={\`go to \${name}\`} />`, ['1 go to']],
    ['one side of a choice', "<p>{isOpen ? 'open' : words.shut}</p>", ['1 open']],
    ['a heading that is handed on', '<LitRows heading="Feeds" rows={rows} />', ['1 Feeds']],
    ['what a table is called', '<Step tables={[{ words: "tables", Table }]} />', ['1 tables']],
    ['letters of any alphabet', '<p>Кабель</p>', ['1 Кабель']],
  ])('catches %s', (_what, element, found) => {
    expect(caughtIn('planted-fault.tsx', `export const Planted = () => ${element};`)).toEqual(found);
  });

  test('catches a whole sentence in any file', () => {
    expect(caughtIn('planted-fault.ts', "\nexport const says = { refusal: 'Choose another file.' };")).toEqual([
      '2 Choose another file.',
    ]);
  });

  test('lets pass what is no word: signs, names of looks, keys, faults of the program, language files', () => {
    const element = "<p className={isLit ? 'row lit' : 'row'} data-key=\"a b\">· {words.close} × {name}</p>";
    expect(caughtIn('sound.tsx', `export const Sound = () => ${element};`)).toEqual([]);
    expect(caughtIn('sound.ts', "export const fail = () => { throw new Error('There is no boat here.'); };")).toEqual(
      [],
    );
    expect(caughtIn('words.en.ts', "export const en = { close: 'Close it now.' };")).toEqual([]);
  });
});
