/** A place of a recording that could not be read. */
export interface BrokenPlace {
  /** counted from 1; of text */
  readonly line?: number;
  /** counted from 0; of a file that is no text */
  readonly byte?: number;
  /** the beginning of the line, what is no plain character escaped; or what is wrong there */
  readonly says: string;
}

/** What was found in a recording. */
export interface ReaderCounts {
  readonly frames: number;
  /** messages that the recorder had put together already */
  readonly messages: number;
  readonly sentences: number;
  /** lines that begin with # */
  readonly comments: number;
  /** lines or records that are none of these */
  readonly broken: number;
  /** the first twenty of them */
  readonly brokenAt: readonly BrokenPlace[];
  /** notes of the recorder about its own interface, under numbers no bus has: left out */
  readonly recorderNotes: number;
  /** bytes of broken lines, and between sentences: a wrong baud rate makes nearly all of them so */
  readonly noiseBytes: number;
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

/** Reads lines that come in as they are spoken. */
export interface LineReader extends RecordingReader {
  /** What was counted so far; what is left of an unfinished line is in no count. */
  soFar(): ReaderCounts;
}
