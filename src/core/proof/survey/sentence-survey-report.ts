/** One kind of sentence from one talker. */
export interface SentSentence {
  /** two letters; of a maker’s own sentence P */
  readonly talker: string;
  readonly formatter: string;
  readonly count: number;
  /** of these without a single figure: present, but telling nothing */
  readonly empty: number;
  readonly longestChars: number;
  /** between one and the next; absent without stamps */
  readonly medianMs?: number;
}

/** What ships told by AIS, counted: who they are is nobody else’s business. */
export interface AisSummary {
  readonly sentences: number;
  /** by sentence and message type, `VDM 18` */
  readonly messages: readonly { readonly formatter: string; readonly type: number; readonly count: number }[];
  /** messages of several sentences that were not whole */
  readonly incomplete: number;
  readonly notDecodable: number;
  readonly ships: number;
}

/** Everything found in the sentences of a recording. */
export interface SentenceReport {
  readonly sentences: number;
  readonly checksumWrong: number;
  readonly checksumAbsent: number;
  /** longer than the 82 characters a sentence may have */
  readonly overLong: number;
  /** characters with CR LF */
  readonly chars: number;
  /** by the stamps in front of the sentences, else by the time of day in them; absent without either */
  readonly spanS?: number;
  /** by talker, then formatter; wrong checksums are not among them */
  readonly kinds: readonly SentSentence[];
  /** absent when no ship was heard */
  readonly ais?: AisSummary;
}
