import { worstBits } from './frame-length.ts';

/** Bits a second on the bus. */
const busBitsPerS = 250_000;

const fullFrameBytes = 8;

/**
 * Share of the bus one message takes at its worst, %: F frames of b bits every T, 100 F b / (T · 250 kbit/s). A message
 * of one frame is as long as its data; one of more frames is counted with full frames. Source: davis-2007.
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
  const bits = frames * worstBits(frames === 1 ? Math.min(dataBytes, fullFrameBytes) : fullFrameBytes);
  return (100 * bits) / ((everyMs / 1000) * busBitsPerS);
};
