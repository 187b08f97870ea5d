import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { sources } from '../src/core/facts/sources.ts';
import { sourcesPage } from './sources.ts';

describe('the page of sources', () => {
  it('lists each source once under its standing, by key, letter for letter', () => {
    const page = sourcesPage({
      zeta: { standing: 'published', text: 'Last.' },
      alpha: { standing: 'published', text: 'First, 2 * 3 <b>.' },
      mine: { standing: 'project choice', text: 'Chosen.' },
    });
    expect(page).toContain('- `alpha`: First, 2 \\* 3 \\<b\\>.\n- `zeta`: Last.\n');
    expect(page).not.toContain('## Computed');
    expect(page.indexOf('## Published')).toBeLessThan(page.indexOf('## Project choice'));
  });

  it('is as fresh as the ledger (npx tsx tools/sources.ts prints it anew)', () => {
    expect(readFileSync(new URL('../docs/sources.md', import.meta.url), 'utf8')).toBe(sourcesPage(sources));
  });
});
