import { readFileSync, writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { byCodeUnit } from '../src/core/boat/ids.ts';
import { rules } from '../src/core/rules/index.ts';
import type { Rule } from '../src/core/rules/rule.ts';
import { type OwnerPain, ownerPains } from './owner-pains.ts';

const areaOf = (id: string): string => id.split('/')[0] ?? id;

const link = (id: string): string => `[\`${id}\`](${id}.md)`;

const ruleLines = (area: string, all: readonly Rule[]): string =>
  all
    .filter(({ id }) => areaOf(id) === area)
    .map(({ id, level, title }) => `- ${link(id)} · ${level}: ${title}`)
    .join('\n');

const painRow = ({ pain, rules: looking, open = '' }: OwnerPain): string =>
  `| ${pain} | ${looking.map(link).join(', ')} | ${open} |`;

/** The page docs/rules/README.md: every rule by area with one line, then what owners run into and which rules look at it. */
export const rulesPage = (all: readonly Rule[], pains: readonly OwnerPain[]): string => {
  const sorted = [...all].sort((a, b) => byCodeUnit(a.id, b.id));
  const areas = [...new Set(sorted.map(({ id }) => areaOf(id)))];
  const parts = [
    '# Rules',
    'Each rule is one check with a page of its own. The level is the usual one; a page says where a rule speaks of lighter or graver cases. Printed by `tools/rules.ts`: change the rules, not this page.',
    ...areas.flatMap((area) => [`## ${area}`, ruleLines(area, sorted)]),
    '## What owners run into',
    'The last column says what no rule looks at yet.',
    ['| what goes wrong | rules | open |', '| --- | --- | --- |', ...pains.map(painRow)].join('\n'),
  ];
  return `${parts.join('\n\n')}\n`;
};

const page = new URL('../docs/rules/README.md', import.meta.url);

const main = (check: boolean): number => {
  const fresh = rulesPage(rules, ownerPains);
  if (!check) {
    writeFileSync(page, fresh);
    return 0;
  }
  if (readFileSync(page, 'utf8') === fresh) return 0;
  console.error('docs/rules/README.md is older than the rules. Run npm run rules.');
  return 1;
};

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  process.exitCode = main(process.argv.includes('--check'));
}
