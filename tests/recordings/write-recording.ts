import { splitCanId } from '../../src/core/proof/readers/can-id.ts';
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

const dateText = (timeUs: number, { between, millis }: { between: string; millis: boolean }): string => {
  const text = new Date(timeUs / 1000).toISOString().replace('T', between);
  return millis ? text : text.replace(/\.\d+Z$/, 'Z');
};

/** The frames as comma-separated lines, times to the millisecond. */
export const csvBytes = (
  frames: readonly RecordedFrame[],
  { between = 'T', millis = true }: { between?: 'T' | '-'; millis?: boolean } = {},
): Uint8Array =>
  asciiBytes(
    frames
      .map(({ timeUs, id, data }) => {
        const { priority, pgn, source, destination } = splitCanId(id);
        const stamp = dateText(timeUs, { between, millis });
        return `${stamp},${priority},${pgn},${source},${destination},${data.length},${hexBytes(data, ',').toLowerCase()}\n`;
      })
      .join(''),
  );

interface PcapngForm {
  readonly littleEndian?: boolean;
  /** value of if_tsresol; absent = the usual microseconds */
  readonly resolution?: number;
  readonly simple?: boolean;
  readonly link?: number;
}

const blockOf = (type: number, body: Uint8Array, littleEndian: boolean): Uint8Array => {
  const padded = Math.ceil(body.length / 4) * 4;
  const bytes = new Uint8Array(12 + padded);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, type, littleEndian);
  view.setUint32(4, bytes.length, littleEndian);
  bytes.set(body, 8);
  view.setUint32(8 + padded, bytes.length, littleEndian);
  return bytes;
};

const bodyOf = (length: number, fill: (view: DataView) => void): Uint8Array => {
  const bytes = new Uint8Array(length);
  fill(new DataView(bytes.buffer));
  return bytes;
};

const ticksOf = (timeUs: number, resolution = 6): bigint =>
  resolution >= 0x80
    ? (BigInt(timeUs) << BigInt(resolution & 0x7f)) / 1_000_000n
    : (BigInt(timeUs) * 10n ** BigInt(resolution)) / 1_000_000n;

const packetBlock = ({ id, data }: RecordedFrame, form: Required<Omit<PcapngForm, 'resolution'>>, ticks: bigint) => {
  const { littleEndian, simple } = form;
  const head = simple ? 4 : 20;
  const body = bodyOf(head + 16, (view) => {
    if (simple) view.setUint32(0, 16, littleEndian);
    else {
      view.setUint32(4, Number(ticks >> 32n), littleEndian);
      view.setUint32(8, Number(ticks & 0xffff_ffffn), littleEndian);
      view.setUint32(12, 16, littleEndian);
      view.setUint32(16, 16, littleEndian);
    }
    view.setUint32(head, (id | 0x8000_0000) >>> 0, false);
    view.setUint8(head + 4, data.length);
  });
  body.set(data, head + 8);
  return blockOf(simple ? 3 : 6, body, littleEndian);
};

/** The frames as one section of a pcapng file, with a block between that no reader of frames needs. */
export const pcapngBytes = (
  frames: readonly RecordedFrame[],
  { littleEndian = true, resolution, simple = false, link = 227 }: PcapngForm = {},
): Uint8Array => {
  const section = bodyOf(16, (view) => {
    view.setUint32(0, 0x1a2b_3c4d, littleEndian);
    view.setUint16(4, 1, littleEndian);
    view.setBigInt64(8, -1n, littleEndian);
  });
  const described = bodyOf(resolution === undefined ? 8 : 20, (view) => {
    view.setUint16(0, link, littleEndian);
    if (resolution === undefined) return;
    view.setUint16(8, 9, littleEndian);
    view.setUint16(10, 1, littleEndian);
    view.setUint8(12, resolution);
  });
  const blocks = [
    blockOf(0x0a0d_0d0a, section, littleEndian),
    blockOf(1, described, littleEndian),
    blockOf(5, new Uint8Array(16), littleEndian),
    ...frames.map((frame) => packetBlock(frame, { littleEndian, simple, link }, ticksOf(frame.timeUs, resolution))),
  ];
  const bytes = new Uint8Array(blocks.reduce((sum, block) => sum + block.length, 0));
  let at = 0;
  for (const block of blocks) {
    bytes.set(block, at);
    at += block.length;
  }
  return bytes;
};
