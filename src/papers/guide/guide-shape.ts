/** A run of words of the guide, as plain data that knows no page. */
export type GuideRun =
  | { readonly kind: 'words'; readonly text: string }
  | { readonly kind: 'strong' | 'stress'; readonly runs: readonly GuideRun[] }
  | { readonly kind: 'code'; readonly text: string }
  | { readonly kind: 'link'; readonly to: string; readonly runs: readonly GuideRun[] };

/** One block of a page of the guide. */
export type GuideBlock =
  | { readonly kind: 'heading'; readonly level: 1 | 2 | 3; readonly runs: readonly GuideRun[] }
  | { readonly kind: 'paragraph'; readonly runs: readonly GuideRun[] }
  | { readonly kind: 'list'; readonly isNumbered: boolean; readonly items: readonly (readonly GuideRun[])[] }
  | {
      readonly kind: 'table';
      readonly head: readonly (readonly GuideRun[])[];
      readonly rows: readonly (readonly (readonly GuideRun[])[])[];
    }
  | { readonly kind: 'code'; readonly text: string }
  | { readonly kind: 'picture'; readonly says: string; readonly file: string };
