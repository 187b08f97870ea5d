/** Bytes of the messages of an invented bus: no real device, boat or place stands behind any of them. */

/** Cuts a message into fast-packet frames of eight bytes, padded with FF. */
export const fastPacketFrames = ({ payload, sequence }: { payload: Uint8Array; sequence: number }): Uint8Array[] => {
  const frames: Uint8Array[] = [];
  let at = 0;
  do {
    const frame = new Uint8Array(8).fill(0xff);
    frame[0] = ((sequence & 7) << 5) | frames.length;
    if (frames.length === 0) frame[1] = payload.length;
    const room = frames.length === 0 ? 6 : 7;
    frame.set(payload.subarray(at, at + room), 8 - room);
    frames.push(frame);
    at += room;
  } while (at < payload.length);
  return frames;
};

export interface InventedName {
  readonly unique: number;
  readonly makerCode: number;
  readonly deviceInstance?: number;
  readonly functionCode: number;
  readonly classCode: number;
}

/** The 8 bytes of an address claim. */
export const namePayload = (name: InventedName): Uint8Array => {
  const low = ((name.makerCode << 21) | (name.unique & 0x1f_ffff)) >>> 0;
  return Uint8Array.of(
    low & 0xff,
    (low >>> 8) & 0xff,
    (low >>> 16) & 0xff,
    low >>> 24,
    name.deviceInstance ?? 0,
    name.functionCode,
    name.classCode << 1,
    0xc0,
  );
};

/** The 134 bytes of product information; len 255 = left open. */
export const productPayload = ({ model, len }: { model: string; len: number }): Uint8Array => {
  const payload = new Uint8Array(134).fill(0xff);
  payload.set([0x34, 0x08, 0x39, 0x30]);
  [model, '1.2.3', 'A', '000042'].forEach((text, at) => {
    payload.set(
      Array.from(text, (letter) => letter.charCodeAt(0)),
      4 + 32 * at,
    );
  });
  payload[132] = 1;
  payload[133] = len;
  return payload;
};

/** Bytes of whole numbers, least significant first: `[value, bytes]` each. */
export const littleEndian = (...parts: (readonly [value: number, bytes: number])[]): Uint8Array =>
  Uint8Array.from(
    parts.flatMap(([value, bytes]) =>
      Array.from({ length: bytes }, (_unused, at) => Math.floor(value / 2 ** (8 * at)) & 0xff),
    ),
  );
