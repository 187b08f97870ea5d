import type { Boat } from '../../../core/boat/boat-schema.ts';
import { type Level, levels } from '../../../core/plan-shape.ts';
import type { ProofFinding, ProofReport } from '../../../core/proof/compare/proof-report.ts';
import {
  evidenceWords,
  messageRow,
  namesIn,
  outcomeWords,
  proofHeadings,
  readingRow,
  strangerSentence,
  unitRow,
  wireSentences,
} from '../../proof/proof-words.ts';
import type { ListTable } from '../../table/list-table.ts';
import type { Block, Chapter } from '../binder-shape.ts';

const findingTable = (level: Level, findings: readonly ProofFinding[]): ListTable => ({
  id: `proof-${level}`,
  title: proofHeadings[level],
  columns: [
    { id: 'done', head: 'done', kind: 'tick' },
    { id: 'says', head: 'what was seen', share: 1.6 },
    { id: 'aboard', head: 'what to do aboard', share: 1.4 },
    { id: 'seen', head: 'when, message, bytes', share: 0.9 },
  ],
  rows: findings.map((finding) => ['', finding.says, finding.cure, evidenceWords(finding) || undefined]),
  empty: 'None.',
});

const table = (id: string, title: string, heads: readonly string[], rows: readonly (readonly string[])[]): Block => ({
  kind: 'table',
  table: {
    id,
    title,
    columns: heads.map((head, at) => ({ id: `c${at}`, head, share: at === 0 ? 0.5 : 1 })),
    rows: rows.map((row) => row.map((cell) => (cell === '' ? undefined : cell))),
    empty: 'None.',
  },
});

/** What a watched boat showed beside her plan. */
export const proofChapter = (boat: Pick<Boat, 'kit'>, report: ProofReport): Chapter => {
  const name = namesIn(boat);
  const open = levels.flatMap((level) => {
    const own = report.findings.filter((finding) => finding.level === level);
    return own.length === 0 ? [] : [{ kind: 'table', table: findingTable(level, own) } satisfies Block];
  });
  const strangers: Block[] =
    report.strangers.length === 0
      ? []
      : [
          { kind: 'heading', text: 'Not in the plan' },
          { kind: 'points', points: report.strangers.map(strangerSentence) },
        ];
  return {
    id: 'proof-of-the-bus',
    title: 'Proof: the bus beside the plan',
    isIndexed: false,
    blocks: [
      { kind: 'words', text: outcomeWords(report) },
      { kind: 'points', points: report.wires.map((wire) => wireSentences(wire).join(' ')) },
      ...open,
      table(
        'proof-units',
        'Units',
        ['how', 'unit', 'where and by what'],
        report.units.map((unit) => unitRow(name, unit)),
      ),
      table(
        'proof-readings',
        'Readings, where each leaves its source',
        ['how', 'reading', 'from', 'last value'],
        report.readings.map((one) => readingRow(name, one)),
      ),
      table(
        'proof-messages',
        'Messages',
        ['how', 'unit', 'message', 'interval'],
        report.messages.map((one) => messageRow(name, one)),
      ),
      ...strangers,
    ],
  };
};
