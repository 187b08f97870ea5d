import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { SetBinder } from '../pages/page-shape.ts';
import type { PaperName } from '../pages/paper-sizes.ts';
import { setAlone } from '../pages/set-binder.ts';
import { templatePages } from './template-pages.ts';
import { templatesOf } from './templates-of.ts';

/** Every template of a boat in its true size, one after the other; a page that says so where nothing is cut. */
export const setTemplates = ({
  boat,
  plan,
  paper,
  dateIso,
}: {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly paper: PaperName;
  readonly dateIso?: string;
}): SetBinder => {
  const day = dateIso === undefined ? {} : { dateIso };
  const title = `${boat.name}: templates to cut by`;
  const sets = templatesOf(boat, plan).map((template) => ({
    title: template.title,
    pages: templatePages(template, { boat: boat.name, paper, ...day }).pages,
  }));
  if (sets.length === 0) {
    const text = 'Nothing is cut: no opening is measured that is enlarged, closed or needs a plate.';
    const blocks = [{ kind: 'words', text } as const];
    return { ...setAlone({ boat: boat.name, ...day, chapters: [{ id: 'templates', title, blocks }] }, paper), title };
  }
  const firstOf = (at: number): number => sets.slice(0, at).reduce((sum, { pages }) => sum + pages.length, 0);
  return {
    title,
    ...day,
    pages: sets.flatMap(({ pages }) => pages),
    bookmarks: sets.map((set, at) => ({ title: set.title, level: 0, page: firstOf(at), topMm: 0 })),
  };
};
