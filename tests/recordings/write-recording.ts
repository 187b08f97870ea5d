import type { RecordedFrame } from './invented-bus.ts';

const hex = (value: number, digits: number): string => value.toString(16).toUpperCase().padStart(digits, '0');
const hexBytes = (data: Uint8Array, between = ''): string => Array.from(data, (byte) => hex(byte, 2)).join(between);

const asciiBytes = (text: string): Uint8Array => {
  const bytes = new Uint8Array(text.length);
  for (let at = 0; at < text.length; at += 1) bytes[at] = text.charCodeAt(at);
  return bytes;
};

const timeText = (timeUs: number): string => {
  const seconds = Math.floor(timeUs / 1_000_000);
  return `(${seconds}.${String(timeUs - seconds * 1_000_000).padStart(6, '0')})`;
};

const lineOf = {
  /** `(1700000000.000000) can0 09F8012B#0102030405060708` */
  log: ({ timeUs, id, data }: RecordedFrame) => `${timeText(timeUs)} can0 ${hex(id, 8)}#${hexBytes(data)}`,
  /** the same without the interface */
  'log-bare': ({ timeUs, id, data }: RecordedFrame) => `${timeText(timeUs)} ${hex(id, 8)}#${hexBytes(data)}`,
  /** `<0x09f8012b> [8] 01 02 03 04 05 06 07 08 ` */
  'old-angle': ({ id, data }: RecordedFrame) =>
    `<0x${hex(id, 8).toLowerCase()}> [${data.length}] ${hexBytes(data, ' ').toLowerCase()} `,
  /** ` can0  09F8012B   [8]  01 02 03 04 05 06 07 08` */
  'old-columns': ({ id, data }: RecordedFrame) => ` can0  ${hex(id, 8)}   [${data.length}]  ${hexBytes(data, ' ')}`,
} as const;

/** The frames as candump text. */
export const candumpBytes = (
  frames: readonly RecordedFrame[],
  { style = 'log', lineEnd = '\n' }: { style?: keyof typeof lineOf; lineEnd?: string } = {},
): Uint8Array => asciiBytes(frames.map((frame) => lineOf[style](frame) + lineEnd).join(''));

/** The frames as a pcap file of link type 227. */
export const pcapBytes = (
  frames: readonly RecordedFrame[],
  { littleEndian = true, nanoseconds = false }: { littleEndian?: boolean; nanoseconds?: boolean } = {},
): Uint8Array => {
  const bytes = new Uint8Array(24 + frames.length * 32);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, nanoseconds ? 0xa1b2_3c4d : 0xa1b2_c3d4, littleEndian);
  view.setUint16(4, 2, littleEndian);
  view.setUint16(6, 4, littleEndian);
  view.setUint32(16, 65_535, littleEndian);
  view.setUint32(20, 227, littleEndian);
  frames.forEach(({ timeUs, id, data }, index) => {
    const at = 24 + index * 32;
    const seconds = Math.floor(timeUs / 1_000_000);
    view.setUint32(at, seconds, littleEndian);
    view.setUint32(at + 4, (timeUs - seconds * 1_000_000) * (nanoseconds ? 1000 : 1), littleEndian);
    view.setUint32(at + 8, 16, littleEndian);
    view.setUint32(at + 12, 16, littleEndian);
    view.setUint32(at + 16, (id | 0x8000_0000) >>> 0, false);
    view.setUint8(at + 20, data.length);
    bytes.set(data, at + 24);
  });
  return bytes;
};

/** Text as bytes, for lines that are no frames. */
export const garbage = asciiBytes;
