/** One frame of a recording. Readers hand out one and the same object again and again: copy what must last. */
export interface RecordedFrame {
  /** microseconds since 1970 by the recorder's clock; undefined when the recording tells no time */
  timeUs: number | undefined;
  /** 29 or 11 bits, without flags */
  id: number;
  extended: boolean;
  /** the recorder's note of a fault on the bus, no message */
  error: boolean;
  remote: boolean;
  /** data bytes, 0 to 8 (of a remote frame: the bytes asked for) */
  length: number;
  /** eight bytes, of which `length` count */
  readonly data: Uint8Array;
}

/** What was found beside the frames. */
export interface ReaderCounts {
  readonly frames: number;
  /** lines that begin with # */
  readonly comments: number;
  /** lines or records that are no frame */
  readonly broken: number;
  /** the recording ends in the middle of a record, or was broken so that the rest cannot be read */
  readonly cutShort: boolean;
}

/** Reads a recording piece by piece, in memory that does not grow with it. */
export interface RecordingReader {
  /** Reads on; the pieces may be cut anywhere. */
  push(chunk: Uint8Array): void;
  /** Reads what is left and tells the counts. */
  end(): ReaderCounts;
}

/** An empty frame to be filled by a reader. */
export const emptyFrame = (): RecordedFrame => ({
  timeUs: undefined,
  id: 0,
  extended: true,
  error: false,
  remote: false,
  length: 0,
  data: new Uint8Array(8),
});
