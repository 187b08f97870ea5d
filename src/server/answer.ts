/** What the server answers: a status and JSON to be written out, a text that is JSON already, or the bytes of a picture. */
export interface Answer {
  readonly status: number;
  readonly json?: unknown;
  readonly text?: string;
  readonly picture?: { readonly type: string; readonly bytes: Buffer };
  /** hash of the boat file that the answer leaves, sent as its ETag */
  readonly hash?: string;
  /** tells the folder of the boat from any other on this machine */
  readonly folder?: string;
  /** the same may be asked again after so many seconds */
  readonly retryAfterS?: number;
}

/** An answer that is a sentence, with what to do about it. */
export const says = (status: number, sentence: string, whatToDo?: string): Answer => ({
  status,
  json: { says: sentence, ...(whatToDo === undefined ? {} : { whatToDo }) },
});
