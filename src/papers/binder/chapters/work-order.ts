import type { Boat } from '../../../core/boat/boat-schema.ts';
import type { BoatLog } from '../../../core/log/boat-log.ts';
import type { Plan } from '../../../core/plan-shape.ts';
import { progressOf } from '../../../core/work/progress.ts';
import type { Drawing } from '../../drawing/shapes.ts';
import type { ListTable } from '../../table/list-table.ts';
import { orderSays } from '../../work/cost-words.ts';
import { pictureOf } from '../../work/picture-of.ts';
import { progressPicture } from '../../work/progress-picture.ts';
import { daysLeftWords } from '../../work/progress-words.ts';
import { stuckSays } from '../../work/stuck-words.ts';
import { workStrips } from '../../work/work-picture.ts';
import type { Block, Chapter } from '../binder-shape.ts';

/** As wide as the words on a page. */
const widthMm = 175;

/** Room on a page for strips of days, under the words above the first of them too. */
const roomMm = { first: 130, page: 235 };
const captionMm = 8;

/** Strips one under another, none of them made smaller: where the next does not fit a page begins. */
const stripBlocks = (strips: readonly Drawing[]): Block[] => {
  let leftMm = roomMm.first;
  return strips.flatMap((drawing): Block[] => {
    const isOver = drawing.heightMm + captionMm > leftMm;
    leftMm = (isOver ? roomMm.page : leftMm) - drawing.heightMm - captionMm;
    return [...(isOver ? [{ kind: 'page' } as const] : []), { kind: 'drawing', drawing, isUpright: true }];
  });
};

const legend =
  'A rope is a person, served where that person works; numbers are those of the list. Below, each essential function: two lines while it is lit, filled while it is dark, points where nobody said what gives it. A filled balloon is done; a nail holds a job to its day.';

/** How the work is done: how far it has come, the days as a picture, every job, and by when what is ordered. */
export const workOrderChapter = (
  boat: Boat,
  plan: Plan,
  { log, lists }: { log: BoatLog; lists: readonly ListTable[] },
): Chapter[] => {
  const { work } = plan;
  if (work === undefined || work.phases.every(({ jobs }) => jobs.length === 0)) return [];
  const input = pictureOf(boat, plan, { work, log });
  const progress = progressOf(plan, log);
  const phaseBlocks = work.phases.flatMap((phase): Block[] => [
    ...(work.phases.length > 1 ? [{ kind: 'heading', text: `Phase ${phase.phase}` } as const] : []),
    ...orderSays(phase).map((text): Block => ({ kind: 'words', text })),
    ...(phase.stuck === undefined ? [] : [{ kind: 'words', text: stuckSays(input, phase.stuck) } as const]),
  ]);
  return [
    {
      id: 'work',
      title: 'Work order',
      blocks: [
        ...phaseBlocks,
        { kind: 'heading', text: 'How far it has come' },
        { kind: 'words', text: daysLeftWords(progress) },
        { kind: 'drawing', drawing: progressPicture(progress, widthMm), isUpright: true },
        { kind: 'heading', text: 'The days' },
        { kind: 'words', isQuiet: true, text: legend },
        ...stripBlocks(workStrips(input, widthMm)),
        ...lists.filter(({ rows }) => rows.length > 0).map((table): Block => ({ kind: 'table', table })),
      ],
    },
  ];
};
