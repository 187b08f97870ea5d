import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

/** Writes src/papers/drawing/generated/font-widths.ts: advance widths, in thousandths of the type size, of the shipped faces. */
const require = createRequire(import.meta.url);

const faces = {
  words: '@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf',
  wordsSemibold: '@expo-google-fonts/source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf',
  figures: '@expo-google-fonts/b612-mono/400Regular/B612Mono_400Regular.ttf',
} as const;

const span = (first: number, last: number): string[] =>
  Array.from({ length: last - first + 1 }, (_, index) => String.fromCodePoint(first + index));

/** Latin with its European letters, and the signs a boat's papers use. */
const characters = [
  ...span(0x20, 0x7e),
  ...span(0xa0, 0x17f),
  ...'–—‘’‚“”„•…′″→←↑↓↔≤≥≠≈−×√ΩµΔ✓✗™€⅓⁄⁰⁴⁵⁶⁷⁸⁹₀₁₂₃',
].filter((character, index, all) => all.indexOf(character) === index && character !== '\u00ad');

interface Font {
  readonly unitsPerEm: number;
  readonly advance: (codePoint: number) => number | undefined;
}

const tableOffsets = (bytes: DataView): Map<string, number> => {
  const offsets = new Map<string, number>();
  for (let index = 0; index < bytes.getUint16(4); index++) {
    const at = 12 + index * 16;
    const tag = String.fromCharCode(...[0, 1, 2, 3].map((step) => bytes.getUint8(at + step)));
    offsets.set(tag, bytes.getUint32(at + 8));
  }
  return offsets;
};

const offsetOf = (offsets: Map<string, number>, tag: string): number => {
  const offset = offsets.get(tag);
  if (offset === undefined) throw new Error(`The font has no ${tag} table.`);
  return offset;
};

/** The glyph of a code point by the font's format 4 character map (the whole basic plane is enough here). */
const glyphOf = (bytes: DataView, cmap: number, codePoint: number): number => {
  const segments = bytes.getUint16(cmap + 6) / 2;
  for (let index = 0; index < segments; index++) {
    const end = bytes.getUint16(cmap + 14 + index * 2);
    if (codePoint > end) continue;
    const startAt = cmap + 16 + segments * 2 + index * 2;
    const start = bytes.getUint16(startAt);
    if (codePoint < start) return 0;
    const delta = bytes.getUint16(startAt + segments * 2);
    const rangeAt = startAt + segments * 4;
    const range = bytes.getUint16(rangeAt);
    if (range === 0) return (codePoint + delta) & 0xffff;
    const glyph = bytes.getUint16(rangeAt + range + (codePoint - start) * 2);
    return glyph === 0 ? 0 : (glyph + delta) & 0xffff;
  }
  return 0;
};

const formatFourMap = (bytes: DataView, cmap: number): number => {
  for (let index = 0; index < bytes.getUint16(cmap + 2); index++) {
    const offset = cmap + bytes.getUint32(cmap + 4 + index * 8 + 4);
    if (bytes.getUint16(offset) === 4) return offset;
  }
  throw new Error('The font has no format 4 character map.');
};

const readFont = (file: string): Font => {
  const buffer = readFileSync(file);
  const bytes = new DataView(buffer.buffer, buffer.byteOffset, buffer.byteLength);
  const offsets = tableOffsets(bytes);
  const cmap = formatFourMap(bytes, offsetOf(offsets, 'cmap'));
  const measured = bytes.getUint16(offsetOf(offsets, 'hhea') + 34);
  const hmtx = offsetOf(offsets, 'hmtx');
  return {
    unitsPerEm: bytes.getUint16(offsetOf(offsets, 'head') + 18),
    advance: (codePoint) => {
      const glyph = glyphOf(bytes, cmap, codePoint);
      return glyph === 0 ? undefined : bytes.getUint16(hmtx + Math.min(glyph, measured - 1) * 4);
    },
  };
};

const widthsOf = (font: Font): (number | undefined)[] =>
  characters.map((character) => {
    const advance = font.advance(character.codePointAt(0) ?? 0);
    return advance === undefined ? undefined : Math.round((advance * 1000) / font.unitsPerEm);
  });

/** Zero stands for "not in this face"; text-width falls back to a full em. */
const tableText = (): string => {
  const tables = Object.entries(faces).map(([face, file]) => {
    const widths = widthsOf(readFont(require.resolve(file))).map((width) => width ?? 0);
    return `  ${face}: [${widths.join(',')}],`;
  });
  return [
    '// Written by tools/font-widths.ts from the shipped fonts; run it again after a font changes.',
    `export const characters = ${JSON.stringify(characters.join(''))};`,
    '',
    '/** Advance widths in thousandths of the type size, one a character above; 0 where the face has none. */',
    'export const widths = {',
    ...tables,
    '} as const satisfies Record<string, readonly number[]>;',
    '',
  ].join('\n');
};

const target = path.join(
  path.dirname(fileURLToPath(import.meta.url)),
  '../src/papers/drawing/generated/font-widths.ts',
);
writeFileSync(target, tableText());
