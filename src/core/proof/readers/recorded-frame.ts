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
