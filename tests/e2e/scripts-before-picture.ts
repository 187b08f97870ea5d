import { readdirSync, readFileSync } from 'node:fs';

/** What the page and its first worker cannot do without: their scripts, what these import, and what that imports. */
export const scriptsBeforePicture = (assets: URL): readonly string[] => {
  const found = new Set<string>();
  const take = (name: string): void => {
    if (found.has(name)) return;
    found.add(name);
    const text = readFileSync(new URL(name, assets), 'utf8');
    for (const [, other = ''] of text.matchAll(/(?:from|import)\s*"\.\/([^"]+\.js)"/g)) take(other);
  };
  // cards, tables, glossary, edits and cures are asked for once the page stands
  for (const name of readdirSync(assets)) if (/^(?:index|plan-worker)-[\w-]{8}\.js$/.test(name)) take(name);
  return [...found];
};
