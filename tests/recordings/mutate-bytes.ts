/** A sequence of whole numbers that looks like chance and is the same every time (xorshift, 32 bits). */
export const startLot = (seed: number): ((below: number) => number) => {
  let state = seed >>> 0 || 1;
  return (below) => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return state % below;
  };
};

/** Bytes that mean something to a reader, so that damage hits where it hurts. */
const tellingBytes = Uint8Array.from([
  0, 9, 10, 13, 32, 33, 35, 36, 40, 41, 42, 44, 45, 46, 48, 49, 57, 58, 60, 62, 65, 70, 82, 84, 90, 91, 92, 93, 97, 102,
  127, 128, 254, 255,
]);

/** A copy of a recording with so many hits: bytes changed, parts copied over others, parts cut out. */
export const mutateBytes = (
  sound: Uint8Array,
  { hits, lot }: { readonly hits: number; readonly lot: (below: number) => number },
): Uint8Array => {
  const bytes = sound.slice();
  let length = bytes.length;
  for (let hit = 0; hit < hits && length > 0; hit += 1) {
    const at = lot(length);
    const size = Math.min(lot(24), length - at);
    switch (lot(6)) {
      case 0:
        bytes[at] = lot(256);
        break;
      case 1:
      case 2:
        bytes[at] = tellingBytes[lot(tellingBytes.length)] ?? 0;
        break;
      case 3:
        bytes[at] = (bytes[at] ?? 0) ^ (1 << lot(8));
        break;
      case 4: {
        const from = lot(length - size + 1);
        bytes.copyWithin(at, from, from + size);
        break;
      }
      default:
        bytes.copyWithin(at, at + size, length);
        length -= size;
    }
  }
  return bytes.subarray(0, length);
};
