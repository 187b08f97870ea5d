interface SizePx {
  readonly widthPx: number;
  readonly heightPx: number;
}

/**
 * The size of a picture whose longest side is at most so many pixels, in the same proportion; never larger than it was.
 *
 * @example sizeWithin({ widthPx: 4000, heightPx: 3000 }, 2000) // { widthPx: 2000, heightPx: 1500 }
 */
export const sizeWithin = ({ widthPx, heightPx }: SizePx, longestPx: number): SizePx => {
  const times = Math.min(1, longestPx / Math.max(widthPx, heightPx));
  const scaled = (sidePx: number): number => Math.max(1, Math.round(sidePx * times));
  return { widthPx: scaled(widthPx), heightPx: scaled(heightPx) };
};
