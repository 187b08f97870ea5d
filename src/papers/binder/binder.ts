import type { Boat } from '../../core/boat/boat-schema.ts';
import { type BoatLog, emptyLog } from '../../core/log/boat-log.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { ProofReport } from '../../core/proof/compare/proof-report.ts';
import { type BinderDrawing, type BinderRequest, binderDrawings } from '../framed/binder-drawings.ts';
import { planLists } from '../lists/plan-lists.ts';
import type { PaperName } from '../pages/paper-sizes.ts';
import type { Binder, Chapter, Standing } from './binder-shape.ts';
import { briefBoat } from './brief-boat.ts';
import { cautionsChapter } from './chapters/cautions.ts';
import { changeLogChapter } from './chapters/change-log.ts';
import { crewChapter } from './chapters/crew-shown.ts';
import { daySheetsChapter } from './chapters/day-sheets.ts';
import { deviationChapter } from './chapters/deviation-cards.ts';
import { drawingsChapter } from './chapters/drawings.ts';
import { findingsChapter } from './chapters/findings.ts';
import { helmChapters } from './chapters/helm-pages.ts';
import { howToUseChapter } from './chapters/how-to-use.ts';
import { keptAboardChapter } from './chapters/kept-aboard.ts';
import { leavingKitChapter } from './chapters/leaving-kit.ts';
import { listChapters, listsOf } from './chapters/list-chapters.ts';
import { openingChapters } from './chapters/openings-and-plates.ts';
import { proofChapter } from './chapters/proof-of-the-bus.ts';
import { settingsChapter } from './chapters/settings.ts';
import { sourcesUsedChapter } from './chapters/sources-used.ts';
import { surveyChapter } from './chapters/survey-page.ts';
import { testRecordChapter } from './chapters/test-record.ts';
import { whatGoesDarkChapter } from './chapters/what-goes-dark.ts';
import { workOrderChapter } from './chapters/work-order.ts';
import { logEntries } from './log-entries.ts';

/** What a binder is made for. */
export interface BinderOf {
  readonly boat: Boat;
  readonly plan: Plan;
  /** what its drawings are laid out for; all else fits any paper */
  readonly paper: PaperName;
  /** its drawings, where somebody has them already; else they are drawn */
  readonly drawings?: readonly BinderDrawing[];
  /** what was found, ticked and noted aboard; nothing unless told */
  readonly log?: BoatLog;
  /** what she showed when her wires were watched, where they were */
  readonly proof?: ProofReport;
  /** “as planned” unless told */
  readonly standing?: Standing;
  readonly dateIso?: string;
  readonly revision?: string;
}

const coverLines = ({ hull }: Boat): string[] => {
  const { kind, lengthM, beamM, draftM } = hull;
  return [`${lengthM} m ${kind.replaceAll('-', ' ')}, beam ${beamM} m, draft ${draftM} m`];
};

/** The chapters in the order in which they are worked with: to fit her out, to prove her, to sail her, to look up. */
const chaptersOf = (
  request: BinderRequest,
  { drawings, log, proof }: { drawings: readonly BinderDrawing[]; log: BoatLog; proof: ProofReport | undefined },
): Chapter[] => {
  const { boat, plan } = request;
  const brief = briefBoat(boat);
  const all = planLists(brief, plan, log);
  const lists = listChapters(all);
  return [
    howToUseChapter(),
    cautionsChapter(boat, plan),
    drawingsChapter(request, drawings),
    ...lists.first,
    ...openingChapters(brief, plan, listsOf(all, ['fits', 'plates'])),
    ...workOrderChapter(brief, plan, { log, lists: listsOf(all, ['work', 'order-dates']) }),
    ...daySheetsChapter(brief, plan, log),
    settingsChapter(brief, plan, {
      byMeasure: listsOf(all, ['papers-first', 'settings-by-measure']),
      before: listsOf(all, ['settings-before']),
    }),
    testRecordChapter(brief, plan, log),
    crewChapter(brief, log),
    ...(proof === undefined ? [] : [proofChapter(brief, proof)]),
    deviationChapter(boat, plan),
    ...helmChapters(brief, plan),
    whatGoesDarkChapter(brief, plan),
    lists.rest,
    findingsChapter(boat, plan),
    surveyChapter(brief, plan),
    ...leavingKitChapter(brief, plan, log),
    keptAboardChapter(boat, listsOf(all, ['spares'])),
    sourcesUsedChapter(boat, plan),
    changeLogChapter(logEntries(boat)),
  ];
};

type Thing = Pick<Boat['kit'][number], 'id' | 'name'>;

/** Things by their whole name, and by the short one that tables use. */
const named = (things: readonly Thing[], brief: readonly Thing[]): Binder['devices'] =>
  things.map(({ id, name }, at) => ({ id, name, brief: brief[at]?.name ?? name }));

/** All papers of a boat in their order: what a yard works from, a surveyor reads and the next owner keeps. */
export const binderOf = ({
  boat,
  plan,
  paper,
  standing = 'as planned',
  drawings,
  log = emptyLog,
  proof,
  ...issue
}: BinderOf): Binder => {
  const request = { boat, plan, paper, standing, ...issue };
  return {
    boat: boat.name,
    standing,
    ...issue,
    cover: coverLines(boat),
    devices: named(boat.kit, briefBoat(boat).kit),
    places: named(boat.places, briefBoat(boat).places),
    chapters: chaptersOf(request, { drawings: drawings ?? binderDrawings(request), log, proof }),
  };
};
