/** Whether a unit sends a message or understands it; `both` where the maker says both. */
export type PastedWay = 'sends' | 'hears' | 'both';

/** One message that was read out of pasted text. */
export interface PastedMessage {
  readonly pgn?: number;
  /** three letters, without the talker's */
  readonly sentence?: string;
  /** the very characters of the text it was read from */
  readonly from: string;
  /** absent where the text does not say */
  readonly way?: PastedWay;
  /** how often it is sent, ms; absent where the text does not say */
  readonly everyMs?: number;
  /** why it may be meant otherwise; absent where nothing speaks against it */
  readonly doubt?: string;
}

/** One line of pasted text and what became of it. */
export interface PastedLine {
  /** from 1 */
  readonly number: number;
  readonly text: string;
  readonly found: readonly PastedMessage[];
  /** says what the lines after it are about */
  readonly isHeading: boolean;
  /** what was not understood, and why; absent where nothing was left over */
  readonly whyNot?: string;
}
