import type { Boat } from '../../../core/boat/boat-schema.ts';
import type { BoatLog } from '../../../core/log/boat-log.ts';
import type { Plan } from '../../../core/plan-shape.ts';
import { isTicked, stepTickId } from '../../../core/work/ticks.ts';
import type { CautionWords } from '../../power/caution-words.ts';
import type { ListTable } from '../../table/list-table.ts';
import { type DayJob, type DaySheet, daySheet } from '../../work/day-sheet.ts';
import { pictureOf } from '../../work/picture-of.ts';
import { workingDays } from '../../work/working-days.ts';
import type { Block, Chapter } from '../binder-shape.ts';

const columns: ListTable['columns'] = [
  { id: 'number', head: 'no.', kind: 'label', share: 0.4 },
  { id: 'job', head: 'job', share: 1.7 },
  { id: 'when', head: 'when, who, where', share: 1 },
  { id: 'steps', head: 'what is done', share: 2 },
  { id: 'done', head: 'done', kind: 'tick', share: 0.4 },
];

interface Known {
  readonly done: ReadonlySet<string>;
  readonly log: BoatLog;
}

const rowOf = (
  { job, number, what, when, hands, place, steps, cables }: DayJob,
  { done, log }: Known,
): ListTable['rows'][number] => [
  String(number),
  cables.length === 0 ? what : `${what}: ${cables.join(', ')}`,
  [when, hands, ...(place === undefined ? [] : [place])].filter((part) => part !== '').join(', '),
  steps.map(({ id, says }) => `${isTicked(log, stepTickId(job.id, id)) ? '✓ ' : ''}${says}.`).join(' '),
  done.has(job.id) ? '✓' : undefined,
];

/** The first sentence of a caution: all of it stands before the drawings. */
const briefly = ({ title, says }: CautionWords): string => `${title}: ${/^.*?[.](?=\s|$)/.exec(says)?.[0] ?? says}`;

const listBlocks = (title: string, all: readonly string[]): Block[] =>
  all.length === 0
    ? []
    : [
        { kind: 'heading', text: title },
        { kind: 'words', text: `${all.join('; ')}.` },
      ];

const darkTable = ({ day, phase, dark }: DaySheet): Block[] =>
  dark.length === 0
    ? [{ kind: 'words', text: 'Nothing is dark today when it matters.' }]
    : [
        {
          kind: 'table',
          table: {
            id: `dark-${phase}-${day}`,
            title: 'Dark today, and what to have ready',
            columns: [
              { id: 'what', head: 'what', share: 1 },
              { id: 'when', head: 'when', share: 1.3 },
              { id: 'tonight', head: 'tonight', share: 0.6 },
              { id: 'fallback', head: 'have ready', share: 2.2 },
            ],
            rows: dark.map(({ name, when, isTonight, fallback }) => [
              name,
              when,
              isTonight ? 'dark' : 'lit again',
              fallback,
            ]),
            empty: 'Nothing.',
          },
        },
      ];

const dayBlocks = (sheet: DaySheet, of: Known): Block[] => [
  { kind: 'heading', text: `${sheet.title}`, about: sheet.jobs.flatMap(({ job }) => job.about) },
  { kind: 'words', text: `${sheet.says[0]?.toUpperCase() ?? ''}${sheet.says.slice(1)}.` },
  {
    kind: 'table',
    table: {
      id: `day-${sheet.phase}-${sheet.day}`,
      title: '',
      columns,
      rows: sheet.jobs.map((job) => rowOf(job, of)),
      empty: 'Nothing is to be done.',
    },
  },
  ...listBlocks('Bring', sheet.tools),
  ...(sheet.cautions.length === 0
    ? []
    : ([
        { kind: 'heading', text: 'Mind' },
        { kind: 'points', points: sheet.cautions.map(briefly) },
      ] satisfies Block[])),
  ...darkTable(sheet),
  { kind: 'heading', text: 'Before you leave her' },
  { kind: 'ticks', ticks: sheet.evening.map(({ id, says }) => ({ text: isTicked(of.log, id) ? `✓ ${says}` : says })) },
  ...listBlocks('Take from the order', sheet.materials),
];

/** A page for each day of the work, to be taken aboard. */
export const daySheetsChapter = (boat: Boat, plan: Plan, log: BoatLog): Chapter[] => {
  const { work } = plan;
  if (work === undefined) return [];
  const input = pictureOf(boat, plan, { work, log });
  const sheets = work.phases.flatMap((phase) => workingDays(phase).map((day) => daySheet(input, phase, day)));
  if (sheets.length === 0) return [];
  return [
    {
      id: 'days',
      title: 'Day sheets',
      blocks: sheets.flatMap((sheet, at): Block[] => [
        ...(at === 0 ? [] : [{ kind: 'page' } as const]),
        ...dayBlocks(sheet, { done: input.done, log }),
      ]),
    },
  ];
};
