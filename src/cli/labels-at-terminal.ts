import { basename } from 'node:path';
import { UserError } from '../core/boat/user-error.ts';
import { binderPdf } from '../node/binder-pdf.ts';
import { boatEnding } from '../node/find-boats.ts';
import type { LabelWish } from '../papers/labels/cable-labels.ts';
import {
  type LabelSheet,
  type LabelTape,
  labelSheets,
  labelTapes,
  usualSheet,
} from '../papers/labels/label-geometry.ts';
import type { PrintOrder } from '../papers/labels/label-pages.ts';
import { type LabelsOf, setLabels } from '../papers/labels/set-labels.ts';

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

/** The labels as a PDF to print and the page that is read first, each with the name of its file; none where she has no labels yet. */
export const labelPapers = async ({
  wish: { geometry, ...wish },
  ...of
}: Pick<LabelsOf, 'boat' | 'plan' | 'paper'> & { readonly wish: LabelsWish }): Promise<
  [name: string, bytes: Uint8Array][]
> => {
  const { readFirst, printed } = setLabels({ ...of, ...wish, geometry: geometry ?? usualSheet(of.paper) });
  if (printed.pages.length === 0) return [];
  return [
    [geometry === undefined ? 'labels.pdf' : `labels-${geometry.id}.pdf`, await binderPdf(printed)],
    ['labels-read-first.pdf', await binderPdf(readFirst)],
  ];
};
