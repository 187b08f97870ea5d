/** No maker: the program has none, and takes none of those that are given out (from memory: 2046 is not given out). */
const makerCode = 2046;
/** A tool that is plugged in for a while (source: pgn-database). */
const functionCode = 130;
const classCode = 10;
const marine = 4;

/**
 * The NAME under which Fairlead asks: a tool that takes whichever address is free, with a number of its own for each time
 * it asks (layout: pgn-database).
 *
 * @example ownName(1) // 'c0148200ffc00001'
 */
export const ownName = (unique: number): string => {
  const low = (BigInt(makerCode) << 21n) | BigInt(unique & 0x1f_ffff);
  const high = (0x80n | BigInt(marine << 4)) << 24n;
  const middle = (BigInt(classCode << 1) << 16n) | (BigInt(functionCode) << 8n);
  return (((high | middle) << 32n) | low).toString(16).padStart(16, '0');
};
