import { isOpen } from '../../../core/accepted-findings.ts';
import type { Boat } from '../../../core/boat/boat-schema.ts';
import { type Finding, type Level, levels, type Plan } from '../../../core/plan-shape.ts';
import { cureWords, currencyOf } from '../../lists/cure-words.ts';
import type { ListTable } from '../../table/list-table.ts';
import type { Block, Chapter } from '../binder-shape.ts';

const titles: Readonly<Record<Level, string>> = {
  danger: 'Dangers: before anything else',
  fault: 'Faults: these will not work, or break a limit',
  doubt: 'Doubts: to settle before buying',
  advice: 'Advice',
};

const cureOf = ({ cure, cures = [] }: Finding, currency: string): string => {
  const [first] = cures;
  return first === undefined ? (cure ?? '') : cureWords(first, currency);
};

const openTable = (level: Level, findings: readonly Finding[], currency: string): ListTable => ({
  id: `findings-${level}`,
  title: titles[level],
  columns: [
    { id: 'done', head: 'done', kind: 'tick' },
    { id: 'says', head: 'what was found', share: 1.6 },
    { id: 'cure', head: 'what to do', share: 1.2 },
    { id: 'limit', head: 'limit from', share: 1 },
  ],
  rows: findings.map((finding) => ['', finding.says, cureOf(finding, currency), finding.limit?.source]),
  empty: 'None.',
});

const acceptedTable = (findings: readonly Finding[]): ListTable => ({
  id: 'findings-accepted',
  title: 'Accepted, each with its reason',
  columns: [
    { id: 'says', head: 'what was found', share: 1.4 },
    { id: 'because', head: 'accepted because', share: 1.2 },
    { id: 'limit', head: 'limit from', share: 1 },
  ],
  rows: findings.map(({ says, accepted, limit }) => [says, accepted, limit?.source]),
  empty: 'None was accepted.',
});

/** What the plan found: by how grave it is what is open, then what was accepted and why. */
export const findingsChapter = (boat: Boat, { findings }: Plan): Chapter => {
  const currency = currencyOf(boat);
  const open = levels.map((level) => ({
    level,
    own: findings.filter((finding) => finding.level === level && isOpen(finding)),
  }));
  return {
    id: 'findings',
    title: 'Findings, open and accepted',
    isIndexed: false,
    blocks: [
      ...(open.every(({ own }) => own.length === 0)
        ? [{ kind: 'words', text: 'Nothing is open.' } satisfies Block]
        : open
            .filter(({ own }) => own.length > 0)
            .map(({ level, own }): Block => ({ kind: 'table', table: openTable(level, own, currency) }))),
      { kind: 'table', table: acceptedTable(findings.filter((finding) => !isOpen(finding))) },
    ],
  };
};
