import type { Drawing } from '../drawing/shapes.ts';
import type { ListTable } from '../table/list-table.ts';

/** How a boat stands in a set of papers: as she is meant to become, or as she was found after the work. */
export type Standing = 'as planned' | 'as fitted';

/** One part of a page. `about` holds ids of what it tells of: the index by place and by device finds the page by them. */
export type Block =
  | { readonly kind: 'heading'; readonly text: string; readonly about?: readonly string[] }
  | { readonly kind: 'words'; readonly text: string; readonly isQuiet?: boolean }
  | { readonly kind: 'points'; readonly points: readonly string[] }
  | {
      readonly kind: 'caution';
      readonly hazard: string;
      readonly text: string;
      /** the code or the person whose word decides */
      readonly deferTo?: string;
    }
  /** `isWhole`: not broken over two pages where it fits on one */
  | { readonly kind: 'table'; readonly table: ListTable; readonly isWhole?: true }
  /** things to tick; `blank` leaves room to write beside each, under the words that say what */
  | {
      readonly kind: 'ticks';
      readonly ticks: readonly { readonly text: string; readonly blank?: string }[];
    }
  /**
   * A drawing in its own size where it fits, else scaled down to the page. It stands on a page turned to its longer side, with
   * words under it at what size it was printed; `isUpright`: among the words of an upright page, its scale on itself or of no
   * account, so that only a smaller print is told of.
   */
  | {
      readonly kind: 'drawing';
      readonly drawing: Drawing;
      readonly about?: readonly string[];
      readonly isUpright?: boolean;
    }
  /** lines to write on, under the words that say what */
  | { readonly kind: 'blanks'; readonly blanks: readonly string[] }
  /** what follows starts a new page */
  | { readonly kind: 'page' };

/** A part of the binder with a name of its own in the contents; it starts on a new page. */
export interface Chapter {
  readonly id: string;
  readonly title: string;
  /** false: the index does not look in it, because it names nearly everything */
  readonly isIndexed?: false;
  readonly blocks: readonly Block[];
}

/** Something the index looks for, by its whole name and by the short one that tables use. */
export interface Named {
  readonly id: string;
  readonly name: string;
  readonly brief: string;
}

/** All papers of one boat in their order, as plain data. It knows nothing of paper sizes or of PDF. */
export interface Binder {
  /** the name of the boat */
  readonly boat: string;
  readonly standing: Standing;
  /** mark of the revision; absent before the first is issued */
  readonly revision?: string;
  /** the day it is of, as YYYY-MM-DD, where one was given */
  readonly dateIso?: string;
  /** what the cover says under the name, a line each */
  readonly cover: readonly string[];
  /** what the index looks for: everything aboard and every place */
  readonly devices: readonly Named[];
  readonly places: readonly Named[];
  readonly chapters: readonly Chapter[];
}
