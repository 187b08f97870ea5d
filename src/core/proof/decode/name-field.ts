/** The 64-bit identity of a device, as it claims its address with (PGN 60928). */
export interface DeviceName {
  /** 16 small hexadecimal digits, most significant first: what the boat file keeps as identity */
  readonly hex: string;
  /** the unit's own number; private, never shown */
  readonly unique: number;
  readonly makerCode: number;
  readonly deviceInstance: number;
  readonly functionCode: number;
  readonly classCode: number;
  readonly systemInstance: number;
  /** 4 = marine */
  readonly industryGroup: number;
  /** may take another address when it loses its own */
  readonly arbitraryAddress: boolean;
}

const hexOf = (byte: number): string => byte.toString(16).padStart(2, '0');

/**
 * Reads a NAME from the 8 bytes of an address claim, least significant first; undefined when there are fewer
 * (source: pgn-database, layout of ISO 11783-5).
 */
export const readName = (data: Uint8Array): DeviceName | undefined => {
  if (data.length < 8) return undefined;
  const byte = (index: number): number => data[index] ?? 0;
  const low = (byte(0) | (byte(1) << 8) | (byte(2) << 16) | (byte(3) << 24)) >>> 0;
  return {
    hex: [7, 6, 5, 4, 3, 2, 1, 0].map((index) => hexOf(byte(index))).join(''),
    unique: low & 0x1f_ffff,
    makerCode: low >>> 21,
    deviceInstance: byte(4),
    functionCode: byte(5),
    classCode: byte(6) >>> 1,
    systemInstance: byte(7) & 0xf,
    industryGroup: (byte(7) >>> 4) & 7,
    arbitraryAddress: byte(7) >>> 7 === 1,
  };
};

/**
 * Which of two NAMEs keeps an address both claim: the lower one, unsigned. Negative = the first. NAMEs are given as
 * 16 small hexadecimal digits, whose order as text is their order as numbers.
 */
export const byStrengthOfName = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
