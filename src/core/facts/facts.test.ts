import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { fieldRows } from './generated/message-fields.ts';
import { pgnRows } from './generated/pgns.ts';
import { fittingSources } from './ledger/fitting-sources.ts';
import { lineSources } from './ledger/line-sources.ts';
import { powerSources } from './ledger/power-sources.ts';
import { settingSources } from './ledger/setting-sources.ts';
import { messageField } from './message-fields.ts';
import { pgnInfo } from './pgns.ts';
import { typicalSheets } from './sheets/index.ts';
import { sources } from './sources.ts';

const here = new URL('.', import.meta.url);
const tables = readdirSync(here).filter((name) => /^(?!.*\.test\.)(?!sources\.).*\.ts$/.test(name));
const isKey = (key: unknown): boolean => typeof key === 'string' && Object.hasOwn(sources, key);

/** Where numbers stand in `value` that have a known source neither beside them nor above; a wrong key is listed too. */
const unsourced = (value: unknown, path: string, isCovered = false): string[] => {
  if (typeof value === 'number') return isCovered ? [] : [path];
  if (typeof value !== 'object' || value === null) return [];
  const entries: [unknown, unknown][] = value instanceof Map ? [...value] : Object.entries(value);
  const key = entries.find(([name]) => name === 'source')?.[1];
  if (key !== undefined && !isKey(key)) return [`${path}.source`];
  return entries.flatMap(([name, part]) => unsourced(part, `${path}.${String(name)}`, isCovered || isKey(key)));
};

describe('the search for figures without a source', () => {
  it('finds one however deep it stands, and a source that is not in the ledger', () => {
    const good = { value: 6, unit: 'm', source: 'practice-bus-limits' };
    expect(unsourced({ good, list: [good] }, 'table')).toEqual([]);
    expect(unsourced({ source: 'practice-bus-limits', deep: { row: [1, 2] } }, 'table')).toEqual([]);
    expect(unsourced({ good, bad: { value: 6 } }, 'table')).toEqual(['table.bad.value']);
    expect(unsourced(new Map([['a', [{ source: 'hearsay', value: 1 }]]]), 'table')).toEqual(['table.a.0.source']);
  });
});

describe.each(tables)('the figures of %s', (file) => {
  it('each have a source in the ledger', async () => {
    const exported: Record<string, unknown> = await import(new URL(file, here).pathname);
    const objects = Object.entries(exported).filter(([, value]) => typeof value === 'object');
    expect(objects.flatMap(([name, value]) => unsourced(value, name))).toEqual([]);
  });

  it('are not given by a file that names no source at all', () => {
    const text = readFileSync(new URL(file, here), 'utf8').replace(/^import .*$/gm, '');
    const names = Object.keys(sources).filter((key) => text.includes(key));
    const figures = text.replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '').match(/(?<![\w'-])\d+(\.\d+)?(?![\w'])/g) ?? [];
    if (figures.some((figure) => Number(figure) > 1)) expect(names).not.toEqual([]);
  });
});

describe('the folders inside the facts', () => {
  it('are the ones checked here one by one, so that no new one escapes', () => {
    const folders = readdirSync(here, { withFileTypes: true }).filter((entry) => entry.isDirectory());
    expect(folders.map(({ name }) => name).toSorted()).toEqual(['generated', 'ledger', 'sheets']);
  });

  it('each row of the generated messages reaches the table that names its source', () => {
    expect(readdirSync(new URL('generated/', here))).toEqual(['message-fields.ts', 'pgns.ts']);
    const infos = pgnRows.map(([pgn]) => pgnInfo(pgn));
    expect(infos.filter((info) => info === undefined)).toEqual([]);
    const fields = fieldRows.map(([pgn, id]) => messageField(pgn, id));
    expect(fields.filter((field) => field === undefined)).toEqual([]);
    expect(unsourced([infos, fields], 'generated')).toEqual([]);
  });

  it('each sheet of a file stands in the one list of sheets, where its source is asked for', async () => {
    const listed = new Set<unknown>(typicalSheets);
    const files = readdirSync(new URL('sheets/', here)).filter((name) => /^(?!.*\.test\.).*\.ts$/.test(name));
    for (const file of files) {
      const exported: Record<string, unknown> = await import(new URL(`sheets/${file}`, here).pathname);
      const rows = Object.values(exported).flatMap((value): readonly unknown[] => (Array.isArray(value) ? value : []));
      const sheets = rows.filter((row) => typeof row === 'object' && row !== null && 'ports' in row);
      expect(
        sheets.filter((sheet) => !listed.has(sheet)),
        file,
      ).toEqual([]);
    }
  });
});

describe('the typical sheets', () => {
  it('each say where their figures come from, in words of the ledger', () => {
    const texts = Object.values(sources).map(({ text }) => text);
    const silent = typicalSheets.filter(({ sourceNote = '' }) => !texts.some((text) => sourceNote.includes(text)));
    expect(silent.map(({ id }) => id)).toEqual([]);
  });
});

describe('the parts of the ledger', () => {
  const rules = readdirSync(new URL('../rules/', here), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts') && !name.includes('.test'))
    .map((name) => `../rules/${name}`);
  const texts = [...tables, ...readdirSync(new URL('sheets/', here)).map((name) => `sheets/${name}`), ...rules]
    .map((file) => readFileSync(new URL(file, here), 'utf8'))
    .join('\n');

  it.each(Object.entries({ lineSources, powerSources, fittingSources, settingSources }))(
    '%s hold no source that no figure and no rule names',
    (_name, part) => {
      expect(Object.keys(part).filter((key) => !texts.includes(`'${key}'`))).toEqual([]);
    },
  );
});

describe('the ledger of sources', () => {
  it('has each source once, whichever part of it it stands in', () => {
    const parts = [lineSources, powerSources, fittingSources, settingSources].flatMap((part) => Object.keys(part));
    const own = readFileSync(new URL('sources.ts', here), 'utf8');
    expect(parts.filter((key, at) => parts.indexOf(key) !== at || own.includes(`  '${key}': {`))).toEqual([]);
  });

  it('says in whole sentences what each source is', () => {
    for (const { text } of Object.values(sources)) expect(text).toMatch(/^[A-Z].*\.$/);
  });

  it('never calls published what its own text says nobody has read', () => {
    const odd = Object.entries(sources).filter(
      ([, { standing, text }]) => standing === 'published' && /from memory|not checked/.test(text),
    );
    expect(odd).toEqual([]);
  });
});
