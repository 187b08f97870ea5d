import type { Boat } from '../../core/boat/boat-schema.ts';
import { levels } from '../../core/plan-shape.ts';
import type { ProofFinding, ProofReport } from '../../core/proof/compare/proof-report.ts';
import { textLines } from '../../core/units/text-lines.ts';
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
} from './proof-words.ts';

const width = 80;

const findingLines = (finding: ProofFinding): string[] => {
  const evidence = evidenceWords(finding);
  return [
    ...textLines(finding.says, { width, lead: '- ' }),
    ...textLines(finding.cure, { width, lead: '  Aboard: ' }),
    ...(evidence === '' ? [] : textLines(evidence, { width, lead: '  Seen: ' })),
    `  [${finding.id}]`,
  ];
};

const findingParts = ({ findings }: ProofReport): string[] =>
  levels.flatMap((level) => {
    const own = findings.filter((finding) => finding.level === level);
    return own.length === 0 ? [] : ['', proofHeadings[level].toUpperCase(), ...own.flatMap(findingLines)];
  });

const rowLines = ([state, ...rest]: readonly string[], lead: number): string[] =>
  textLines(rest.filter((part) => part !== '').join(', '), { width, lead: `${(state ?? '').padEnd(lead)}  ` });

const section = (title: string, rows: readonly (readonly string[])[]): string[] => {
  const lead = Math.max(0, ...rows.map(([state = '']) => state.length));
  return rows.length === 0 ? [] : ['', title, ...rows.flatMap((row) => rowLines(row, lead))];
};

/** A proof as calm text of 80 columns: how it came out, what is not as planned, then units, messages and readings. */
export const proofText = (boat: Pick<Boat, 'kit'>, report: ProofReport): string => {
  const name = namesIn(boat);
  const notRight = report.messages.filter(({ state }) => state !== 'right' && state !== 'not-due');
  return [
    ...textLines(`${report.boat}: ${outcomeWords(report)}`, { width, lead: '' }),
    ...report.wires.flatMap((wire) => textLines(wireSentences(wire).join(' '), { width, lead: '' })),
    ...findingParts(report),
    ...section(
      'UNITS',
      report.units.map((unit) => unitRow(name, unit)),
    ),
    ...section(
      'MESSAGES NOT AS PLANNED',
      notRight.map((one) => messageRow(name, one)),
    ),
    ...section(
      'READINGS, where each leaves its source',
      report.readings.map((one) => readingRow(name, one)),
    ),
    ...section(
      'NOT IN THE PLAN',
      report.strangers.map((stranger) => ['', strangerSentence(stranger)]),
    ),
    '',
  ].join('\n');
};
