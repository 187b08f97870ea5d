import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { brokenLinkSchema } from '../src/core/plan-shape.ts';

const page = readFileSync(new URL('../docs/broken-links.md', import.meta.url), 'utf8');
const rows = [...page.matchAll(/^\| `([a-z-]+)` +\| (\S.*\S) +\| (\S.*\S) +\|$/gm)].map(([, kind]) => kind);

describe('the page on why a reading does not arrive', () => {
  test('has one line for every kind of broken link, with what it means and what mends it', () => {
    const kinds = brokenLinkSchema.shape.broken.options;
    expect(new Set(rows)).toEqual(new Set(kinds));
    expect(rows).toHaveLength(kinds.length);
  });
});
