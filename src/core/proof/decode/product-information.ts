import { paddedText } from './padded-text.ts';

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

const textBytes = 32;

const textAt = (payload: Uint8Array, from: number): string =>
  paddedText(payload.subarray(from, from + textBytes)) ?? '';

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
