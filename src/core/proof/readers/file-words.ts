/** A whole number of two bytes. */
export const uint16At = (bytes: Uint8Array, at: number, little: boolean): number => {
  const first = bytes[at] ?? 0;
  const second = bytes[at + 1] ?? 0;
  return little ? first | (second << 8) : (first << 8) | second;
};

/** A whole number of four bytes, without sign. */
export const uint32At = (bytes: Uint8Array, at: number, little: boolean): number => {
  const a = bytes[at] ?? 0;
  const b = bytes[at + 1] ?? 0;
  const c = bytes[at + 2] ?? 0;
  const d = bytes[at + 3] ?? 0;
  return (little ? a | (b << 8) | (c << 16) | (d << 24) : (a << 24) | (b << 16) | (c << 8) | d) >>> 0;
};

/** Two pieces as one; the second itself where nothing stands before it. */
export const joinedBytes = (first: Uint8Array, second: Uint8Array): Uint8Array => {
  if (first.length === 0) return second;
  const joined = new Uint8Array(first.length + second.length);
  joined.set(first);
  joined.set(second, first.length);
  return joined;
};
