import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { checks } from '../src/core/proof/compare/checks/index.ts';
import { byCodeUnit } from '../src/core/units/by-code-unit.ts';
import { proofPage } from './proof-checks.ts';

const folder = new URL('../docs/proof/', import.meta.url);

describe('the pages of the checks of a watched boat', () => {
  test('the list is that of the checks', () => {
    expect(readFileSync(new URL('README.md', folder), 'utf8')).toBe(proofPage(checks));
  });

  test('each check has a page that says its id, its level and its sources, and no page is left over', () => {
    const pages = readdirSync(folder).filter((name) => name !== 'README.md');
    expect(pages.sort(byCodeUnit)).toEqual(checks.map(({ id }) => `${id}.md`));
    for (const { id, level, sources } of checks) {
      const text = readFileSync(new URL(`${id}.md`, folder), 'utf8');
      expect(text).toContain(`\`${id}\` · ${level}`);
      for (const key of sources) expect(text, id).toContain(`\`${key}\``);
    }
  });
});
