import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { SetBinder } from '../pages/page-shape.ts';
import type { PaperName } from '../pages/paper-sizes.ts';
import { setAlone } from '../pages/set-binder.ts';
import { cableLabels, type LabelWish } from './cable-labels.ts';
import { flatRuler } from './flat-ruler.ts';
import { geometryWords, type LabelSheet, type LabelTape } from './label-geometry.ts';
import { labelNotes } from './label-notes.ts';
import { labelPages, labelTitle, type PrintOrder } from './label-pages.ts';

/** Which labels are wanted: of which boat, in which geometry, from which label on, how often each. */
export interface LabelsOf extends LabelWish, Pick<PrintOrder, 'startAt' | 'copies'> {
  readonly boat: Boat;
  readonly plan: Plan;
  /** of the pages that are read first */
  readonly paper: PaperName;
  readonly geometry: LabelSheet | LabelTape;
}

/** The labels of a boat: what is read before they are printed, with a ruler to check a print by, and the sheets or the tape. */
export interface SetLabels {
  readonly readFirst: SetBinder;
  /** without a page where she has no labels yet */
  readonly printed: SetBinder;
}

/** Sets the labels of every cable of a boat. */
export const setLabels = ({ boat, plan, paper, geometry, ...wish }: LabelsOf): SetLabels => {
  const labels = cableLabels(boat, plan, wish);
  const pages = labelPages(labels, geometry, { boat: boat.name, ...wish });
  const day = wish.dateIso === undefined ? {} : { dateIso: wish.dateIso };
  const chapters = [labelNotes({ boat, plan, labels, pages, geometry })];
  const notes = setAlone({ boat: boat.name, ...day, chapters }, paper);
  const [first, ...more] = notes.pages;
  const ruler = flatRuler({ leftMm: 20, topMm: 6 });
  return {
    readFirst: {
      ...notes,
      pages: first === undefined ? [] : [{ ...first, shapes: [...first.shapes, ...ruler] }, ...more],
    },
    printed: { title: labelTitle(boat.name, geometry), ...day, pages: pages.pages, bookmarks: [] },
  };
};

/** Both as one, to be looked at before they are printed. */
export const labelsTogether = ({ readFirst, printed }: SetLabels, geometry: LabelSheet | LabelTape): SetBinder => ({
  ...readFirst,
  title: printed.title,
  pages: [...readFirst.pages, ...printed.pages],
  bookmarks: [
    ...readFirst.bookmarks,
    ...(printed.pages.length === 0
      ? []
      : [{ title: geometryWords(geometry), level: 0 as const, page: readFirst.pages.length, topMm: 0 }]),
  ],
});
