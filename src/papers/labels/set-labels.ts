import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { SetBinder } from '../pages/page-shape.ts';
import type { PaperName } from '../pages/paper-sizes.ts';
import { setAlone } from '../pages/set-binder.ts';
import { cableLabels } from './cable-labels.ts';
import { geometryWords, type LabelSheet, type LabelTape } from './label-geometry.ts';
import { labelNotes } from './label-notes.ts';
import { labelPages, labelTitle } from './label-pages.ts';

/** The labels of a boat to be looked at before they are printed: what to read first, then the sheets or the tape. */
export const setLabels = ({
  boat,
  plan,
  paper,
  geometry,
  ...wish
}: {
  readonly boat: Boat;
  readonly plan: Plan;
  /** of the pages that are read first */
  readonly paper: PaperName;
  readonly geometry: LabelSheet | LabelTape;
  readonly dateIso?: string;
  /** address of the boat in the app, for the codes */
  readonly boatAddress?: string;
}): SetBinder => {
  const labels = cableLabels(boat, plan, wish);
  const pages = labelPages(labels, geometry, { boat: boat.name });
  const notes = setAlone(
    {
      boat: boat.name,
      standing: 'as planned',
      ...(wish.dateIso === undefined ? {} : { dateIso: wish.dateIso }),
      cover: [],
      devices: [],
      places: [],
      chapters: [labelNotes({ boat, plan, labels, pages, geometry })],
    },
    paper,
  );
  return {
    ...notes,
    title: labelTitle(boat.name, geometry),
    pages: [...notes.pages, ...pages.pages],
    bookmarks: [
      ...notes.bookmarks,
      ...(pages.pages.length === 0
        ? []
        : [{ title: geometryWords(geometry), level: 0 as const, page: notes.pages.length, topMm: 0 }]),
    ],
  };
};
