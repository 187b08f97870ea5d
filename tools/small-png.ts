import { unzlibSync, zlibSync } from 'fflate';

/** As many colours as one byte tells apart. */
const mostColours = 256;
const signature = [137, 80, 78, 71, 13, 10, 26, 10];

/** The neighbour that a sum of three foretells best, as the format has it. */
const foretold = (left: number, up: number, corner: number): number => {
  const sum = left + up - corner;
  const [byLeft, byUp, byCorner] = [Math.abs(sum - left), Math.abs(sum - up), Math.abs(sum - corner)];
  if (byLeft <= byUp && byLeft <= byCorner) return left;
  return byUp <= byCorner ? up : corner;
};

interface Picture {
  readonly width: number;
  readonly height: number;
  /** colours as one number each, row by row */
  readonly pixels: Uint32Array;
}

const chunksOf = (png: Uint8Array): { readonly kind: string; readonly data: Uint8Array }[] => {
  const view = new DataView(png.buffer, png.byteOffset, png.byteLength);
  const chunks = [];
  for (let at = signature.length; at < png.length; ) {
    const length = view.getUint32(at);
    const kind = String.fromCharCode(...png.subarray(at + 4, at + 8));
    chunks.push({ kind, data: png.subarray(at + 8, at + 8 + length) });
    at += 12 + length;
  }
  return chunks;
};

/** Reads a picture as a browser writes it: eight bits a channel, three or four of them, not interlaced. */
const readPng = (png: Uint8Array): Picture => {
  const chunks = chunksOf(png);
  const head = chunks.find(({ kind }) => kind === 'IHDR')?.data;
  if (head === undefined || head[8] !== 8 || (head[9] !== 2 && head[9] !== 6) || head[12] !== 0) {
    throw new Error('This is no picture as a browser takes it.');
  }
  const view = new DataView(head.buffer, head.byteOffset);
  const [width, height, depth] = [view.getUint32(0), view.getUint32(4), head[9] === 2 ? 3 : 4];
  const packed = chunks.flatMap(({ kind, data }) => (kind === 'IDAT' ? [...data] : []));
  const raw = unzlibSync(Uint8Array.from(packed));
  const stride = width * depth;
  const rows = new Uint8Array(stride * height);
  const pixels = new Uint32Array(width * height);
  for (let y = 0; y < height; y += 1) {
    const filter = raw[y * (stride + 1)] ?? 0;
    for (let x = 0; x < stride; x += 1) {
      const at = y * stride + x;
      const left = x < depth ? 0 : (rows[at - depth] ?? 0);
      const up = y === 0 ? 0 : (rows[at - stride] ?? 0);
      const corner = x < depth || y === 0 ? 0 : (rows[at - stride - depth] ?? 0);
      const added = [0, left, up, (left + up) >> 1, foretold(left, up, corner)][filter] ?? 0;
      rows[at] = (raw[y * (stride + 1) + 1 + x] ?? 0) + added;
    }
  }
  for (let at = 0; at < pixels.length; at += 1) {
    const from = at * depth;
    pixels[at] = ((rows[from] ?? 0) << 16) | ((rows[from + 1] ?? 0) << 8) | (rows[from + 2] ?? 0);
  }
  return { width, height, pixels };
};

const apart = (one: number, other: number): number => {
  const red = (one >> 16) - (other >> 16);
  const green = ((one >> 8) & 255) - ((other >> 8) & 255);
  const blue = (one & 255) - (other & 255);
  return red * red + green * green + blue * blue;
};

/** The colours seen most, and for every colour which of them stands for it. */
const paletteOf = (
  pixels: Uint32Array,
): { readonly palette: readonly number[]; readonly indexOf: Map<number, number> } => {
  const counts = new Map<number, number>();
  for (const colour of pixels) counts.set(colour, (counts.get(colour) ?? 0) + 1);
  const palette = [...counts]
    .sort(([one, ofOne], [other, ofOther]) => ofOther - ofOne || one - other)
    .slice(0, mostColours)
    .map(([colour]) => colour);
  const nearest = (colour: number): number =>
    palette.reduce((best, one, at) => (apart(one, colour) < apart(palette[best] ?? 0, colour) ? at : best), 0);
  return { palette, indexOf: new Map([...counts.keys()].map((colour) => [colour, nearest(colour)])) };
};

const crcTable = Array.from({ length: 256 }, (_, start) => {
  let sum = start;
  for (let bit = 0; bit < 8; bit += 1) sum = sum & 1 ? 0xed_b8_83_20 ^ (sum >>> 1) : sum >>> 1;
  return sum >>> 0;
});

const chunk = (kind: string, data: Uint8Array): Uint8Array => {
  const bytes = new Uint8Array(12 + data.length);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, data.length);
  bytes.set(new TextEncoder().encode(kind), 4);
  bytes.set(data, 8);
  let sum = 0xff_ff_ff_ff;
  for (const byte of bytes.subarray(4, 8 + data.length)) sum = (crcTable[(sum ^ byte) & 255] ?? 0) ^ (sum >>> 8);
  view.setUint32(8 + data.length, (sum ^ 0xff_ff_ff_ff) >>> 0);
  return bytes;
};

/**
 * The same picture in a third of the bytes: a screen of drawings and words has few colours, so one byte a pixel does. Colours
 * beyond the 256 seen most become the one nearest to them.
 */
export const smallPng = (png: Uint8Array): Uint8Array => {
  const { width, height, pixels } = readPng(png);
  const { palette, indexOf } = paletteOf(pixels);
  const rows = new Uint8Array((width + 1) * height);
  for (let at = 0; at < pixels.length; at += 1) {
    rows[Math.floor(at / width) * (width + 1) + 1 + (at % width)] = indexOf.get(pixels[at] ?? 0) ?? 0;
  }
  const head = new Uint8Array(13);
  const view = new DataView(head.buffer);
  view.setUint32(0, width);
  view.setUint32(4, height);
  head.set([8, 3, 0, 0, 0], 8);
  const colours = Uint8Array.from(palette.flatMap((colour) => [colour >> 16, (colour >> 8) & 255, colour & 255]));
  const parts = [
    Uint8Array.from(signature),
    chunk('IHDR', head),
    chunk('PLTE', colours),
    chunk('IDAT', zlibSync(rows, { level: 9 })),
    chunk('IEND', new Uint8Array()),
  ];
  const bytes = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let to = 0;
  for (const part of parts) {
    bytes.set(part, to);
    to += part.length;
  }
  return bytes;
};
