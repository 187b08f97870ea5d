import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Revision } from '../../core/boat/revision.ts';
import type { LogEntry } from '../../core/log/log-entry.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { ProofReport } from '../../core/proof/compare/proof-report.ts';
import type { GivenOut } from '../../papers/binder/given-out.ts';
import type { Bookmark, Page } from '../../papers/pages/page-shape.ts';
import type { PaperName } from '../../papers/pages/paper-sizes.ts';
import type { BinderPart } from '../../papers/pages/parts-of.ts';
import type { SettingProgress } from '../../papers/pages/set-binder.ts';

/** Of what a binder is made: of the boat as she stands now, or of one that was given out, last of those up to it. */
export type BinderSubject =
  | {
      readonly boat: Boat;
      readonly plan: Plan;
      readonly dateIso: string;
      readonly log?: readonly LogEntry[];
      /** what the last recording of her wires came to */
      readonly proof?: ProofReport;
    }
  | { readonly revision: Revision; readonly upTo: readonly Revision[]; readonly name: string };

/** A file to be made of the binder that is set: all of it or one part as a PDF, or its lists. */
export type BinderFile =
  | { readonly as: 'pdf'; readonly part?: BinderPart }
  | { readonly as: 'xlsx' | 'json' }
  | { readonly as: 'csv'; readonly list: string };

/** Which papers: the binder, the quote, templates to cut by, or labels of a geometry by its id. */
export type WhichPapers = 'binder' | 'quote' | 'templates' | { readonly labels: string };

/** What is to be set: of which boat, on what paper, which papers; `boatAddress` goes into the codes of labels. */
export interface BinderOrder {
  readonly of: BinderSubject;
  readonly paper: PaperName;
  readonly papers: WhichPapers;
  readonly boatAddress?: string;
}

/** What is asked of the worker that makes binders. One worker sets one binder; its pages stay there and are asked for by number. */
export type BinderAsked =
  | ({ readonly asks: 'set' } & BinderOrder)
  | { readonly asks: 'pages'; readonly pages: readonly number[] }
  | { readonly asks: 'file'; readonly file: BinderFile }
  /** gives up the file in the making */
  | { readonly asks: 'stop' }
  | { readonly asks: 'since'; readonly revision: Revision; readonly boat: Boat };

/** What is told of a binder that is set: all but the pages themselves. */
export interface BinderTold {
  readonly title: string;
  /** what every sheet of it says of itself */
  readonly given: GivenOut;
  readonly sizes: readonly Pick<Page, 'widthMm' | 'heightMm'>[];
  readonly bookmarks: readonly Bookmark[];
  readonly parts: readonly BinderPart[];
  readonly lists: readonly { readonly id: string; readonly title: string }[];
}

/** What comes back. */
export type BinderReply =
  | { readonly kind: 'setting'; readonly progress: SettingProgress }
  | { readonly kind: 'set'; readonly told: BinderTold }
  | { readonly kind: 'pages'; readonly pages: readonly { readonly at: number; readonly page: Page }[] }
  | { readonly kind: 'writing'; readonly done: number; readonly of: number }
  | { readonly kind: 'file'; readonly file: BinderFile; readonly bytes: Uint8Array<ArrayBuffer> }
  | { readonly kind: 'since'; readonly says: string }
  | { readonly kind: 'refused'; readonly says: string };
