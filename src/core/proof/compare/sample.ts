/** Some figures out of many, in memory that stays flat. */
export interface Sample {
  add(value: number): void;
  count(): number;
  /** undefined before the first */
  median(): number | undefined;
  /** width of the middle four fifths */
  spread(): number;
}

const mostKept = 256;

/** Starts a sample; the lot by which a later figure takes the place of an earlier one is a fixed sequence. */
export const startSample = (): Sample => {
  const kept: number[] = [];
  let count = 0;
  let lot = 1;
  const at = (share: number): number | undefined => {
    const sorted = [...kept].sort((a, b) => a - b);
    return sorted[Math.floor(share * (sorted.length - 1))];
  };
  return {
    add(value) {
      count += 1;
      if (kept.length < mostKept) {
        kept.push(value);
        return;
      }
      lot = (Math.imul(lot, 1_664_525) + 1_013_904_223) >>> 0;
      const place = Math.floor((lot / 2 ** 32) * count);
      if (place < mostKept) kept[place] = value;
    },
    count: () => count,
    median: () => at(0.5),
    spread: () => (at(0.9) ?? 0) - (at(0.1) ?? 0),
  };
};
