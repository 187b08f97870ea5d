import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { planLists } from '../lists/plan-lists.ts';
import type { Binder, Chapter } from './binder-shape.ts';
import { briefBoat } from './brief-boat.ts';
import { cautionsChapter } from './chapters/cautions.ts';
import { changeLogChapter } from './chapters/change-log.ts';
import { deviationChapter } from './chapters/deviation-cards.ts';
import { drawingsChapter } from './chapters/drawings.ts';
import { findingsChapter } from './chapters/findings.ts';
import { howToUseChapter } from './chapters/how-to-use.ts';
import { keptAboardChapter } from './chapters/kept-aboard.ts';
import { listChapters } from './chapters/list-chapters.ts';
import { settingsChapter } from './chapters/settings.ts';
import { sourcesUsedChapter } from './chapters/sources-used.ts';
import { testRecordChapter } from './chapters/test-record.ts';
import { whatGoesDarkChapter } from './chapters/what-goes-dark.ts';

/** What a binder is made for. */
export interface BinderOf {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly dateIso?: string;
  readonly revision?: string;
}

const coverLines = ({ hull }: Boat): string[] => {
  const { kind, lengthM, beamM, draftM } = hull;
  return [`${lengthM} m ${kind.replaceAll('-', ' ')}, beam ${beamM} m, draft ${draftM} m`];
};

/** The chapters in the order in which they are worked with: to fit her out, to prove her, to sail her, to look up. */
const chaptersOf = (boat: Boat, plan: Plan): Chapter[] => {
  const brief = briefBoat(boat);
  const lists = listChapters(planLists(brief, plan));
  return [
    howToUseChapter(),
    cautionsChapter(boat, plan),
    drawingsChapter(boat, plan),
    ...lists.first,
    settingsChapter(brief, plan),
    testRecordChapter(brief, plan),
    deviationChapter(boat),
    whatGoesDarkChapter(brief, plan),
    lists.rest,
    findingsChapter(boat, plan),
    keptAboardChapter(boat, plan),
    sourcesUsedChapter(boat, plan),
    changeLogChapter(),
  ];
};

type Thing = Pick<Boat['kit'][number], 'id' | 'name'>;

/** Things by their whole name, and by the short one that tables use. */
const named = (things: readonly Thing[], brief: readonly Thing[]): Binder['devices'] =>
  things.map(({ id, name }, at) => ({ id, name, brief: brief[at]?.name ?? name }));

/** All papers of a boat in their order: what a yard works from, a surveyor reads and the next owner keeps. */
export const binderOf = ({ boat, plan, dateIso, revision }: BinderOf): Binder => ({
  boat: boat.name,
  standing: 'as planned',
  ...(revision === undefined ? {} : { revision }),
  ...(dateIso === undefined ? {} : { dateIso }),
  cover: coverLines(boat),
  devices: named(boat.kit, briefBoat(boat).kit),
  places: named(boat.places, briefBoat(boat).places),
  chapters: chaptersOf(boat, plan),
});
