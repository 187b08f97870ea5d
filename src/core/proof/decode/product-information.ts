/** What a device says of itself when asked (PGN 126996). The four texts are the maker's: never shown unless asked for. */
export interface ProductInformation {
  readonly databaseVersion: number;
  readonly productCode: number;
  readonly model: string;
  readonly software: string;
  readonly modelVersion: string;
  readonly serial: string;
  readonly certification: number;
  /** load on the bus in units of 50 mA; absent when the device leaves it open (FF) */
  readonly len?: number;
}

const messageBytes = 134;
const notAvailable = 0xff;

/** A text of 32 bytes: ends at the first FF or 00; spaces and @ around it are padding. */
const textAt = (payload: Uint8Array, from: number): string => {
  const field = payload.subarray(from, from + 32);
  const end = field.findIndex((byte) => byte === 0xff || byte === 0);
  const text = Array.from(end < 0 ? field : field.subarray(0, end), (byte) =>
    byte < 0x20 || byte === 0x7f ? ' ' : String.fromCharCode(byte),
  ).join('');
  return text.replace(/^[ @]+/, '').replace(/[ @]+$/, '');
};

/** Reads product information; undefined when the message is shorter than its 134 bytes (source: pgn-database). */
export const readProductInformation = (payload: Uint8Array): ProductInformation | undefined => {
  if (payload.length < messageBytes) return undefined;
  const byte = (index: number): number => payload[index] ?? 0;
  const len = byte(133);
  return {
    databaseVersion: byte(0) | (byte(1) << 8),
    productCode: byte(2) | (byte(3) << 8),
    model: textAt(payload, 4),
    software: textAt(payload, 36),
    modelVersion: textAt(payload, 68),
    serial: textAt(payload, 100),
    certification: byte(132),
    ...(len === notAvailable ? {} : { len }),
  };
};
