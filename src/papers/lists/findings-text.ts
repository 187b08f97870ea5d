import { type Finding, type Level, levels } from '../../core/plan-shape.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { type Gathered, gatherFindings } from './gather-findings.ts';

const width = 80;

/** What each level is called above its findings. */
const headings: Readonly<Record<Level, string>> = {
  danger: 'DANGER, before anything else',
  fault: 'FAULTS, which will not work or break a limit',
  doubt: 'DOUBTS, to settle before buying',
  advice: 'ADVICE',
};

const findingLines = ({ says, limit, cure, id }: Finding): string[] => [
  ...textLines(says, { width, lead: '- ' }),
  ...(cure === undefined ? [] : textLines(cure, { width, lead: '  Cure: ' })),
  ...(limit === undefined ? [] : textLines(limit.source, { width, lead: '  Limit: ' })),
  `  [${id}]`,
];

const noteLines = ({ said, more }: Gathered): string[] => [
  ...said.flatMap(findingLines),
  ...(more.length === 0
    ? []
    : [
        `- and ${more.length} more of this kind:`,
        ...more.flatMap(({ says, id }) => [...textLines(says, { width, lead: '  . ' }), `    [${id}]`]),
      ]),
];

/** The findings as calm text of 80 columns, gravest first and many of one kind gathered, each with its cure, the source of its limit and its id. */
export const findingsText = (findings: readonly Finding[]): string => {
  if (findings.length === 0) return 'Nothing wrong was found.\n';
  const parts = levels.flatMap((level) => {
    const own = findings.filter((finding) => finding.level === level);
    return own.length === 0 ? [] : [headings[level], ...gatherFindings(own).flatMap(noteLines), ''];
  });
  return `${parts.join('\n').trimEnd()}\n`;
};
