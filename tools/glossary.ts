import { readFileSync, writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';

/** One row of the glossary. */
interface GlossaryRow {
  readonly word: string;
  readonly also: readonly string[];
  readonly meaning: string;
}

/** The rows of every table of the glossary page, in its order. Throws for a word that is explained twice. */
export const glossaryRows = (page: string): GlossaryRow[] => {
  const rows = [...page.matchAll(/^\| \*\*(.+?)\*\* \|(.*?)\| (.+?) *\|$/gm)].map(
    ([, word = '', also = '', meaning = '']): GlossaryRow => ({
      word,
      also: also.split(',').flatMap((form) => (form.trim() === '' ? [] : [form.trim()])),
      meaning,
    }),
  );
  const forms = rows.flatMap(({ word, also }) => [word, ...also]);
  const twice = forms.find((form, at) => forms.indexOf(form) !== at);
  if (twice !== undefined) throw new Error(`docs/glossary.md explains "${twice}" twice.`);
  return rows;
};

/** The glossary as the app carries it: source text of `src/papers/glossary/generated/rows.ts`. */
export const glossarySource = (page: string): string =>
  [
    '// Made by tools/glossary.ts from docs/glossary.md: change that, not this.',
    '',
    '/** Word, other forms of it, and its meaning in one sentence. */',
    'export const glossaryRows: readonly (readonly [string, readonly string[], string])[] = [',
    ...glossaryRows(page).map(({ word, also, meaning }) => `  ${JSON.stringify([word, also, meaning])},`),
    '];',
    '',
  ].join('\n');

const page = new URL('../docs/glossary.md', import.meta.url);
const generated = new URL('../src/papers/glossary/generated/rows.ts', import.meta.url);

const main = (check: boolean): number => {
  const fresh = glossarySource(readFileSync(page, 'utf8'));
  if (!check) {
    writeFileSync(generated, fresh);
    return 0;
  }
  if (readFileSync(generated, 'utf8') === fresh) return 0;
  console.error('The app’s glossary is older than docs/glossary.md. Run npm run glossary.');
  return 1;
};

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  process.exitCode = main(process.argv.includes('--check'));
}
