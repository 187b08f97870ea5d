import { isOpen } from '../../../core/accepted-findings.ts';
import type { Boat } from '../../../core/boat/boat-schema.ts';
import { sources } from '../../../core/facts/sources.ts';
import { levels, type Plan } from '../../../core/plan-shape.ts';
import { rules } from '../../../core/rules/index.ts';
import { byCodeUnit } from '../../../core/units/by-code-unit.ts';
import { openingList } from '../../lists/opening-list.ts';
import { keepUnits, printCount } from '../../lists/print-figure.ts';
import type { ListCell, ListTable } from '../../table/list-table.ts';
import type { Chapter } from '../binder-shape.ts';

type Unit = Boat['kit'][number];

const listed = (units: readonly Unit[]): string => keepUnits(units.map(({ name }) => name).join('; '));

/** What came, what went, and the serials a maker’s warranty asks for. */
const changedPoints = ({ kit }: Boat): string[] => {
  const [comes, goes] = (['comes', 'goes'] as const).map((fate) => kit.filter((unit) => unit.fate === fate));
  const known = kit.flatMap(({ name, fate, aboard }) =>
    fate === 'goes' || aboard?.serial === undefined ? [] : [`${name} ${aboard.serial}`],
  );
  const unknown = (comes ?? []).filter(({ aboard }) => aboard?.serial === undefined).length;
  return [
    ...(comes === undefined || comes.length === 0 ? [] : [`Fitted, ${comes.length}: ${listed(comes)}.`]),
    ...(goes === undefined || goes.length === 0 ? [] : [`Taken out, ${goes.length}: ${listed(goes)}.`]),
    ...(known.length === 0 ? [] : [`Serials: ${known.join('; ')}.`]),
    ...(unknown === 0
      ? []
      : [`${printCount(unknown, 'serial')} of what was fitted still to be written into the kit list.`]),
  ];
};

const levelWords = { danger: 'danger', fault: 'fault', doubt: 'doubt', advice: 'advice' } as const;

/** How many findings of each level are open, in a sentence. */
const openWords = ({ findings }: Plan): string => {
  const counts = levels.flatMap((level) => {
    const count = findings.filter((finding) => finding.level === level && isOpen(finding)).length;
    return count === 0 ? [] : [printCount(count, levelWords[level], level === 'advice' ? 'advices' : undefined)];
  });
  return counts.length === 0
    ? 'Nothing found by the checks is open.'
    : `Open when this was printed: ${counts.join(', ')}. Each stands in the chapter of findings.`;
};

const acceptedPoints = ({ findings }: Plan): string[] => {
  const accepted = findings.filter((finding) => !isOpen(finding));
  return accepted.length === 0
    ? ['No finding was accepted.']
    : accepted.map(({ says, accepted: because = '' }) => `${says} Accepted because: ${because}`);
};

const foundPoints = ({ fitted = [] }: Boat): string[] =>
  fitted.length === 0
    ? []
    : [`${printCount(fitted.length, 'difference')} between plan and boat entered: see the change log.`];

const wholeOf = (row: readonly ListCell[]): string =>
  [row[3] === undefined ? undefined : `${row[3]} mm`, row[4]].filter((part) => part !== undefined).join(', ');

/** Where something that must stay tight is passed, narrow enough to stand beside the rest on one page. */
const tightOpenings = (boat: Boat, plan: Plan): ListTable => ({
  id: 'tight-openings',
  title: 'Through deck, bulkheads and hull',
  columns: [
    { id: 'where', head: 'where', share: 1.5 },
    { id: 'what', head: 'what passes', share: 1.3 },
    { id: 'hole', head: 'hole' },
    { id: 'closed', head: 'closed by', share: 1.2 },
  ],
  rows: openingList(boat, plan)
    .rows.filter(([, through]) => through !== 'bulkhead')
    .map((row) => [`${row[0]} (${row[1]})`, row[2], wholeOf(row), row[5]]),
  empty: 'Nothing that keeps water or fire out is passed.',
});

/** Standards, laws and rules of class: what a surveyor can open and read. */
const isRuleText = (text: string): boolean =>
  /^(ABYC|Code of Federal|DIN|France|Guidance to the Offshore|IEC|IEEE|IMO|ISAF|ISO|NFPA|SAE|USCG)\b/.test(text);

/** The rule itself, without what was taken from it: "33 CFR 183.455", "ISO 13297:2020". */
const ruleName = (text: string): string => {
  const [name = text] = text.replace('Code of Federal Regulations, ', '').split(/, second-hand|: | \(formerly/);
  return name;
};

const isSecondHand = (text: string): boolean => text.includes('second-hand');

/** The texts behind the rules: every rule looked at this boat, whether it found anything or not; those read themselves first. */
const checkedAgainst = (): string => {
  const texts = [...new Set(rules.flatMap((rule) => rule.sources))]
    .filter((key) => sources[key].standing === 'published')
    .map((key) => sources[key].text)
    .filter(isRuleText);
  const named = (some: readonly string[]): string => some.map(ruleName).sort(byCodeUnit).join('; ');
  const [read, quoted] = [texts.filter((text) => !isSecondHand(text)), texts.filter(isSecondHand)];
  return quoted.length === 0 ? named(read) : `${named(read)}; second-hand ${named(quoted)}`;
};

/**
 * What a surveyor, an insurer and a maker ask of a refit: what changed and who did it, which texts it was checked against, what is
 * open or was accepted and why, where it goes through deck, bulkheads and hull.
 */
export const surveyChapter = (boat: Boat, plan: Plan): Chapter => ({
  id: 'survey',
  title: 'For surveyor, insurer and warranty',
  isIndexed: false,
  blocks: [
    {
      kind: 'words',
      text: 'The plan was computed from what was measured and entered, and checked by program; it is no survey and no approval. Who did the work answers for the work.',
    },
    { kind: 'blanks', blanks: ['Planned by, on', 'Fitted by, from and to', 'Looked at and tested by, on'] },
    { kind: 'heading', text: 'What changed' },
    { kind: 'points', points: changedPoints(boat) },
    { kind: 'table', table: tightOpenings(boat, plan) },
    { kind: 'heading', text: 'Findings' },
    { kind: 'points', points: [openWords(plan), ...foundPoints(boat), ...acceptedPoints(plan)] },
    { kind: 'heading', text: 'Checked against' },
    {
      kind: 'words',
      text: `${checkedAgainst()}. The chapter of sources says of each what was taken from it, and what rests on common practice or memory.`,
    },
  ],
});
