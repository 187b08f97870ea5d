import type { BinderOf } from '../../papers/binder/binder.ts';
import type { SetBinder } from '../../papers/pages/page-shape.ts';
import type { SettingProgress } from '../../papers/pages/set-binder.ts';

/** What a binder is asked for with: the boat and her plan, the paper, the day. */
export type BinderAsked = BinderOf;

/**
 * What comes back of a binder, in this order: each chapter as it is set, all pages to look at before anything is printed, each
 * page as it is written, the file.
 */
export type BinderReply =
  | { readonly kind: 'chapter'; readonly progress: SettingProgress }
  | { readonly kind: 'pages'; readonly set: SetBinder }
  | { readonly kind: 'written'; readonly done: number; readonly of: number }
  | { readonly kind: 'file'; readonly bytes: Uint8Array<ArrayBuffer> };
