import { basename } from 'node:path';
import type { Boat } from '../core/boat/boat-schema.ts';
import { UserError } from '../core/boat/user-error.ts';
import type { Plan } from '../core/plan-shape.ts';
import { binderPdf } from '../node/binder-pdf.ts';
import { boatEnding } from '../node/find-boats.ts';
import { type CableLabel, cableLabels, type LabelWish } from '../papers/labels/cable-labels.ts';
import { flatRuler } from '../papers/labels/flat-ruler.ts';
import {
  type LabelSheet,
  type LabelTape,
  labelSheets,
  labelTapes,
  usualSheet,
} from '../papers/labels/label-geometry.ts';
import { labelNotes } from '../papers/labels/label-notes.ts';
import { type LabelPages, labelPages, labelTitle, type PrintOrder } from '../papers/labels/label-pages.ts';
import type { PaperName } from '../papers/pages/paper-sizes.ts';
import { setAlone } from '../papers/pages/set-binder.ts';

/** How labels are wanted: in which geometry, from which label on, how often each, with which address in their codes. */
export interface LabelsWish extends LabelWish, Pick<PrintOrder, 'startAt' | 'copies'> {
  readonly geometry?: LabelSheet | LabelTape;
}

export interface LabelsTyped {
  readonly labels?: string | undefined;
  readonly address?: string | undefined;
  readonly labelsFrom?: number | undefined;
  readonly labelCopies?: number | undefined;
}

const geometryOf = (typed: string): LabelSheet | LabelTape => {
  const all = [...labelSheets, ...labelTapes];
  const found = all.find(({ id }) => id === typed.toLowerCase());
  if (found !== undefined) return found;
  throw new UserError({
    says: `There are no labels “${typed}”.`,
    whatToDo: `Write --labels with one of ${all.map(({ id }) => id).join(', ')}.`,
  });
};

const isWeb = (address: string): boolean => {
  try {
    return ['http:', 'https:'].includes(new URL(address).protocol);
  } catch {
    return false;
  }
};

/** The address of the boat of a file in the app: boats are served under the names of their files. */
const boatAddressOf = (address: string, file: string): string => {
  if (!isWeb(address))
    throw new UserError({
      says: `“${address}” is no address.`,
      whatToDo: 'Write --address as the app is opened, like http://192.168.1.20:4610.',
    });
  const id = basename(file, boatEnding);
  return `${address.replace(/[#/]+$/, '')}/#/boat/${encodeURIComponent(id)}`;
};

/**
 * What was typed of the labels, checked.
 *
 * @throws UserError for a geometry there is none of, or an address that is none
 */
export const labelsWish = (file: string, typed: LabelsTyped, dateIso?: string): LabelsWish => ({
  ...(dateIso === undefined ? {} : { dateIso }),
  ...(typed.labels === undefined ? {} : { geometry: geometryOf(typed.labels) }),
  ...(typed.address === undefined ? {} : { boatAddress: boatAddressOf(typed.address, file) }),
  ...(typed.labelsFrom === undefined ? {} : { startAt: typed.labelsFrom }),
  ...(typed.labelCopies === undefined ? {} : { copies: typed.labelCopies }),
});

interface LabelsOf {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly paper: PaperName;
  readonly wish: LabelsWish;
}

/** The page that is read first, with a ruler in its upper margin. */
const notesPdf = (
  { boat, plan, paper, wish }: LabelsOf,
  of: { labels: readonly CableLabel[]; pages: LabelPages; geometry: LabelSheet | LabelTape },
): Promise<Uint8Array> => {
  const set = setAlone(
    {
      boat: boat.name,
      standing: 'as planned',
      ...(wish.dateIso === undefined ? {} : { dateIso: wish.dateIso }),
      cover: [],
      devices: [],
      places: [],
      chapters: [labelNotes({ boat, plan, ...of })],
    },
    paper,
  );
  const pages = set.pages.map((page, at) =>
    at === 0 ? { ...page, shapes: [...page.shapes, ...flatRuler({ leftMm: 20, topMm: 6 })] } : page,
  );
  return binderPdf({ ...set, pages });
};

/** The labels as a PDF to print and the page that is read first, each with the name of its file. */
export const labelPapers = async (of: LabelsOf): Promise<[name: string, bytes: Uint8Array][]> => {
  const { boat, plan, paper, wish } = of;
  const geometry = wish.geometry ?? usualSheet(paper);
  const labels = cableLabels(boat, plan, wish);
  if (labels.length === 0) return [];
  const pages = labelPages(labels, geometry, { boat: boat.name, ...wish });
  const printed = await binderPdf({
    title: labelTitle(boat.name, geometry),
    ...(wish.dateIso === undefined ? {} : { dateIso: wish.dateIso }),
    pages: pages.pages,
    bookmarks: [],
  });
  return [
    [wish.geometry === undefined ? 'labels.pdf' : `labels-${geometry.id}.pdf`, printed],
    ['labels-read-first.pdf', await notesPdf(of, { labels, pages, geometry })],
  ];
};
