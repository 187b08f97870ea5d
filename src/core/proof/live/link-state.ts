/** How the link of a live source stands, told the moment it changes. */
export type LinkState =
  /** `baud` of a serial port */
  | { readonly kind: 'open'; readonly baud?: number }
  /** no link: unplugged, refused, not there; the source tries again by itself */
  | { readonly kind: 'gone'; readonly says: string; readonly whatToDo: string }
  /** what was read so far was cut off or another file stands in its place; reading goes on */
  | { readonly kind: 'note'; readonly says: string }
  /** nothing more will come */
  | { readonly kind: 'ended' };
