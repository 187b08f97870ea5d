import { readFileSync, writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { byCodeUnit } from '../src/core/boat/ids.ts';
import { type Source, type Standing, sources } from '../src/core/facts/sources.ts';

const standings: readonly { standing: Standing; title: string; means: string }[] = [
  {
    standing: 'published',
    title: 'Published',
    means: 'Somebody printed it, and the page was read, or is said to be second-hand.',
  },
  { standing: 'computed', title: 'Computed', means: 'It follows from other figures here by a formula that is shown.' },
  {
    standing: 'common practice',
    title: 'Common practice',
    means: 'Several public handbooks agree, or the trade does it so.',
  },
  { standing: 'from memory', title: 'From memory', means: 'Not checked against a page. It is never shown as checked.' },
  {
    standing: 'project choice',
    title: 'Project choice',
    means: 'Sources differ or are silent, so this project chose; most can be set otherwise.',
  },
];

/** A text as Markdown shows it letter for letter. */
const plain = (text: string): string => text.replace(/[\\`*_<>[\]|]/g, '\\$&');

/** The page docs/sources.md: every source of the ledger under its standing, by key. */
export const sourcesPage = (ledger: Readonly<Record<string, Source>>): string => {
  const entries = Object.entries(ledger).sort(([one], [other]) => byCodeUnit(one, other));
  const parts = standings.flatMap(({ standing, title, means }) => {
    const own = entries.filter(([, source]) => source.standing === standing);
    if (own.length === 0) return [];
    return [`## ${title}`, means, own.map(([key, { text }]) => `- \`${key}\`: ${plain(text)}`).join('\n')];
  });
  const head =
    'Every limit and table value in `src/core/facts` names one of these sources. Printed by `tools/sources.ts`: change the ledger, not this page.';
  return `${['# Sources', head, ...parts].join('\n\n')}\n`;
};

const page = new URL('../docs/sources.md', import.meta.url);

const main = (check: boolean): number => {
  const fresh = sourcesPage(sources);
  if (!check) {
    writeFileSync(page, fresh);
    return 0;
  }
  if (readFileSync(page, 'utf8') === fresh) return 0;
  console.error('docs/sources.md is older than the ledger. Run npx tsx tools/sources.ts.');
  return 1;
};

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  process.exitCode = main(process.argv.includes('--check'));
}
