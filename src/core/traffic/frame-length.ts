/** Bits of a frame without stuff bits, 3 bits of space included: 67 + 8n or 47 + 8n (source: davis-2007). */
export const unstuffedBits = (dataBytes: number, extended = true): number => (extended ? 67 : 47) + 8 * dataBytes;

/** Most bits a frame can take, 3 bits of space included: 80 + 10n or 55 + 10n (source: davis-2007). */
export const worstBits = (dataBytes: number, extended = true): number => (extended ? 80 : 55) + 10 * dataBytes;
