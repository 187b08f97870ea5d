import { isOpen } from '../../core/accepted-findings.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { type Finding, type Level, levels } from '../../core/plan-shape.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { cureWords, currencyOf } from './cure-words.ts';
import { type Gathered, gatherFindings } from './gather-findings.ts';
import { keepUnits } from './print-figure.ts';

const width = 80;

/** What each level is called above its findings. */
const headings: Readonly<Record<Level, string>> = {
  danger: 'DANGER, before anything else',
  fault: 'FAULTS, which will not work or break a limit',
  doubt: 'DOUBTS, to settle before buying',
  advice: 'ADVICE',
};

/** Every cure with its price where one is known, else the first in words. */
const cureLines = ({ cure, cures = [] }: Finding, currency: string): string[] => {
  if (cures.every(({ cost }) => cost === undefined))
    return cure === undefined ? [] : textLines(keepUnits(cure), { width, lead: '  Cure: ' });
  return cures.flatMap((own, at) =>
    textLines(keepUnits(cureWords(own, currency)), { width, lead: at === 0 ? '  Cure: ' : '  Or:   ' }),
  );
};

const findingLines = (finding: Finding, currency: string): string[] => {
  const { says, limit, id, accepted } = finding;
  return [
    ...textLines(keepUnits(says), { width, lead: '- ' }),
    ...cureLines(finding, currency),
    ...(limit === undefined ? [] : textLines(keepUnits(limit.source), { width, lead: '  Limit: ' })),
    ...(accepted === undefined ? [] : textLines(accepted, { width, lead: '  Accepted because: ' })),
    `  [${id}]`,
  ];
};

const noteLines = ({ said, more }: Gathered, currency: string): string[] => [
  ...said.flatMap((finding) => findingLines(finding, currency)),
  ...(more.length === 0
    ? []
    : [
        `- and ${more.length} more of this kind:`,
        ...more.flatMap(({ says, id }) => [...textLines(keepUnits(says), { width, lead: '  . ' }), `    [${id}]`]),
      ]),
];

/** The findings as calm text of 80 columns, gravest first and many of one kind gathered, each with its cures, the source of its limit and its id; those that were accepted come last, with the reason. */
export const findingsText = (boat: Pick<Boat, 'prices'>, findings: readonly Finding[]): string => {
  if (findings.length === 0) return 'Nothing wrong was found.\n';
  const currency = currencyOf(boat);
  const parts = levels.flatMap((level) => {
    const own = findings.filter((finding) => finding.level === level && isOpen(finding));
    return own.length === 0
      ? []
      : [headings[level], ...gatherFindings(own).flatMap((gathered) => noteLines(gathered, currency)), ''];
  });
  const accepted = findings.filter((finding) => !isOpen(finding));
  const last =
    accepted.length === 0
      ? []
      : ['ACCEPTED, each with its reason', ...accepted.flatMap((finding) => findingLines(finding, currency))];
  return `${[...parts, ...last].join('\n').trimEnd()}\n`;
};
