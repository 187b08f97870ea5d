import { readFileSync, writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import type { Check } from '../src/core/proof/compare/check.ts';
import { checks } from '../src/core/proof/compare/checks/index.ts';

const line = ({ id, level, title }: Check): string => `- [\`${id}\`](${id}.md) · ${level}: ${title}`;

/** The page docs/proof/README.md: every check of a watched bus or line with one line. */
export const proofPage = (all: readonly Check[]): string =>
  [
    '# What is looked for in a watched bus or line',
    'A recording, or a bus as it speaks, is held against the plan of the boat. Each check has a page of its own; the level is the usual one. These are no rules of the plan: they speak of the boat as she is. Printed by `tools/proof-checks.ts`: change the checks, not this page.',
    all.map(line).join('\n'),
  ]
    .join('\n\n')
    .concat('\n');

const page = new URL('../docs/proof/README.md', import.meta.url);

const main = (check: boolean): number => {
  const fresh = proofPage(checks);
  if (!check) {
    writeFileSync(page, fresh);
    return 0;
  }
  if (readFileSync(page, 'utf8') === fresh) return 0;
  console.error('docs/proof/README.md is older than the checks. Run npm run rules.');
  return 1;
};

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  process.exitCode = main(process.argv.includes('--check'));
}
