import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { rules } from '../src/core/rules/index.ts';
import { ownerPains } from '../tools/owner-pains.ts';
import { rulesPage } from '../tools/rules.ts';

const known = new Set(rules.map(({ id }) => id));

describe('what owners run into', () => {
  test('is listed whole: sixteen pains, each once', () => {
    expect(new Set(ownerPains.map(({ pain }) => pain)).size).toBe(16);
    expect(ownerPains).toHaveLength(16);
  });

  test.each(ownerPains.map((entry) => [entry.pain, entry] as const))('%s', (_, { rules: looking, open }) => {
    expect(looking.filter((id) => !known.has(id))).toEqual([]);
    expect(new Set(looking).size).toBe(looking.length);
    // no pain is left out in silence: a rule looks at it, or it is said why none does
    expect(looking.length > 0 || (open ?? '') !== '').toBe(true);
  });
});

describe('the page of rules', () => {
  test('is as fresh as the rules (npm run rules prints it anew)', () => {
    const file = readFileSync(new URL('../docs/rules/README.md', import.meta.url), 'utf8');
    expect(file).toBe(rulesPage(rules, ownerPains));
  });

  test('lists each rule once, by area, with its level and its sentence', () => {
    const page = rulesPage(rules, []);
    for (const { id, level, title } of rules) {
      expect(page.split(`- [\`${id}\`](${id}.md) · ${level}: ${title}\n`)).toHaveLength(2);
    }
  });

  test('says of a pain which rules look at it and what is open', () => {
    const page = rulesPage([], [{ pain: 'It is dark.', rules: ['a/b', 'c/d'], open: 'Nobody has a lamp.' }]);
    expect(page).toContain('| It is dark. | [`a/b`](a/b.md), [`c/d`](c/d.md) | Nobody has a lamp. |\n');
  });
});
