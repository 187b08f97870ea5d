import type { RecordedFrame } from './recorded-frame.ts';

/** A message that the recorder had put together from its frames; good until the next call, like a frame. */
export interface RecordedMessage {
  /** microseconds since 1970 by the recorder's clock; undefined when the recording tells no time */
  readonly timeUs: number | undefined;
  /** 0 wins over all others */
  readonly priority: number;
  readonly pgn: number;
  readonly source: number;
  /** 255 = everyone */
  readonly destination: number;
  readonly data: Uint8Array;
}

/** One sentence of NMEA 0183 as it came. */
export interface RecordedSentence {
  /** microseconds since 1970 by the stamp in front of it; undefined when none stands there */
  readonly timeUs: number | undefined;
  /** from its start character to the last one before the line end */
  readonly text: string;
  /** a wrong one is dropped and counted; an absent one proves nothing, and old talkers send none */
  readonly checksum: 'right' | 'wrong' | 'absent';
  /** characters on the wire, with CR LF even where the recording ends its lines with LF */
  readonly chars: number;
  /** the source that a tag block in front of it names */
  readonly from?: string;
}

/** Takes what a recording or a live bus holds. What is not asked for is counted only. */
export interface RecordingSink {
  readonly onFrame?: (frame: RecordedFrame) => void;
  readonly onMessage?: (message: RecordedMessage) => void;
  readonly onSentence?: (sentence: RecordedSentence) => void;
}
