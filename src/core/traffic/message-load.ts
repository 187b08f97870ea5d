import { worstBits } from './frame-length.ts';

/** Bits a second on the bus. */
const busBitsPerS = 250_000;

const fullFrameBytes = 8;

/** Most bits of one frame of a message: one frame is as long as its data, one of several is counted full. Source: davis-2007. */
export const messageFrameBits = ({
  frames,
  dataBytes,
}: {
  readonly frames: number;
  readonly dataBytes: number;
}): number => worstBits(frames === 1 ? Math.min(dataBytes, fullFrameBytes) : fullFrameBytes);

/**
 * Share of the bus one message takes at its worst, %: F frames of b bits every T, 100 F b / (T · 250 kbit/s).
 * Source: davis-2007.
 */
export const messageLoadPct = ({
  frames,
  dataBytes,
  everyMs,
}: {
  readonly frames: number;
  readonly dataBytes: number;
  readonly everyMs: number;
}): number => {
  const bits = frames * messageFrameBits({ frames, dataBytes });
  return (100 * bits) / ((everyMs / 1000) * busBitsPerS);
};
