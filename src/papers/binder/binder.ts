import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { planLists } from '../lists/plan-lists.ts';
import type { Binder, Chapter } from './binder-shape.ts';
import { drawingsChapter } from './chapters/drawings.ts';
import { listChapters } from './chapters/list-chapters.ts';
import { settingsChapter } from './chapters/settings.ts';

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

/** All papers of a boat in their order: what a yard works from, a surveyor reads and the next owner keeps. */
export const binderOf = ({ boat, plan, dateIso, revision }: BinderOf): Binder => {
  const lists = listChapters(planLists(boat, plan));
  const chapters: Chapter[] = [drawingsChapter(boat, plan), ...lists.first, settingsChapter(boat, plan), lists.rest];
  return {
    boat: boat.name,
    standing: 'as planned',
    ...(revision === undefined ? {} : { revision }),
    ...(dateIso === undefined ? {} : { dateIso }),
    cover: coverLines(boat),
    devices: boat.kit.map(({ id, name }) => ({ id, name })),
    places: boat.places.map(({ id, name }) => ({ id, name })),
    chapters,
  };
};
