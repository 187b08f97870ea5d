import { readdirSync, readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';

const assets = new URL('../../dist/web/assets/', import.meta.url);

test('what a browser must fetch before the first picture stays under 250 kB of compressed script', () => {
  const before = readdirSync(assets).filter((name) => /^(?:index|plan-worker)-.*\.js$/.test(name));
  expect(before).toHaveLength(2);
  const bytes = before.reduce((sum, name) => sum + gzipSync(readFileSync(new URL(name, assets))).length, 0);
  expect(bytes).toBeLessThan(250_000);
});

test('all that a phone fetches, page, script and style, stays under 30 kB compressed', () => {
  const phone = new URL('../../dist/phone/', import.meta.url);
  const files = readdirSync(new URL('assets/', phone)).map((name) => `assets/${name}`);
  expect(files).toHaveLength(2);
  const bytes = ['index.html', 'first-theme.js', ...files].reduce(
    (sum, name) => sum + gzipSync(readFileSync(new URL(name, phone))).length,
    0,
  );
  expect(bytes).toBeLessThan(30_000);
});
