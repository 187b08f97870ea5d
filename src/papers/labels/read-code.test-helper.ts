import type { LabelCode } from './label-code.ts';

// A reader of QR codes written from the layout of ISO/IEC 18004 for versions 1 to 6. It shares nothing with what makes ours,
// corrects nothing, and throws where a check word is wrong.

type Level = 'L' | 'M' | 'Q' | 'H';

/** Data words of each block, by version and level. */
const blocks: readonly Readonly<Record<Level, readonly number[]>>[] = [
  { L: [19], M: [16], Q: [13], H: [9] },
  { L: [34], M: [28], Q: [22], H: [16] },
  { L: [55], M: [44], Q: [17, 17], H: [13, 13] },
  { L: [80], M: [32, 32], Q: [24, 24], H: [9, 9, 9, 9] },
  { L: [108], M: [43, 43], Q: [15, 15, 16, 16], H: [11, 11, 12, 12] },
  { L: [68, 68], M: [27, 27, 27, 27], Q: [19, 19, 19, 19], H: [15, 15, 15, 15] },
];
const wordsOfVersion = [26, 44, 70, 100, 134, 172];

const levels: readonly Level[] = ['M', 'L', 'H', 'Q'];

const masks: readonly ((x: number, y: number) => boolean)[] = [
  (x, y) => (x + y) % 2 === 0,
  (_, y) => y % 2 === 0,
  (x) => x % 3 === 0,
  (x, y) => (x + y) % 3 === 0,
  (x, y) => (Math.floor(y / 2) + Math.floor(x / 3)) % 2 === 0,
  (x, y) => ((x * y) % 2) + ((x * y) % 3) === 0,
  (x, y) => (((x * y) % 2) + ((x * y) % 3)) % 2 === 0,
  (x, y) => (((x + y) % 2) + ((x * y) % 3)) % 2 === 0,
];

const isFixed = (size: number, x: number, y: number): boolean => {
  if (x === 6 || y === 6) return true;
  if ((x < 9 && y < 9) || (x >= size - 8 && y < 9) || (x < 9 && y >= size - 8)) return true;
  const middle = size - 7;
  return size > 21 && Math.abs(x - middle) <= 2 && Math.abs(y - middle) <= 2;
};

/** The level and the mask, from the fifteen bits beside the upper left corner. */
const formatOf = ({ isDark }: LabelCode): { level: Level; mask: number } => {
  const along = [0, 1, 2, 3, 4, 5, 7, 8].map((x) => isDark(x, 8));
  const up = [7, 5, 4, 3, 2, 1, 0].map((y) => isDark(8, y));
  const bits = [...along, ...up].reduce((sum, dark) => sum * 2 + (dark ? 1 : 0), 0) ^ 0x5412;
  let rest = bits;
  for (let at = 14; at >= 10; at -= 1) if ((rest >> at) & 1) rest ^= 0x537 << (at - 10);
  if (rest !== 0) throw new Error('the format bits are wrong');
  return { level: levels[bits >> 13] ?? 'L', mask: (bits >> 10) & 7 };
};

const wordsIn = (code: LabelCode, mask: number): number[] => {
  const { squares: size, isDark } = code;
  const bits: number[] = [];
  let isUp = true;
  for (let right = size - 1; right > 0; right -= 2) {
    if (right === 6) right = 5;
    for (let step = 0; step < size; step += 1) {
      const y = isUp ? size - 1 - step : step;
      for (const x of [right, right - 1]) {
        if (isFixed(size, x, y)) continue;
        bits.push(isDark(x, y) !== (masks[mask]?.(x, y) ?? false) ? 1 : 0);
      }
    }
    isUp = !isUp;
  }
  return Array.from({ length: Math.floor(bits.length / 8) }, (_, at) =>
    bits.slice(8 * at, 8 * at + 8).reduce((sum, bit) => sum * 2 + bit, 0),
  );
};

const times = (a: number, b: number): number => {
  let product = 0;
  for (let bit = 7; bit >= 0; bit -= 1) {
    product = (product << 1) ^ (product & 0x80 ? 0x11d : 0);
    if ((b >> bit) & 1) product ^= a;
  }
  return product;
};

/** Every check of a block must come to nothing: the block as a polynomial at each power of 2. */
const checkBlock = (block: readonly number[], checks: number): void => {
  let root = 1;
  for (let at = 0; at < checks; at += 1) {
    const value = block.reduce((sum, word) => times(sum, root) ^ word, 0);
    if (value !== 0) throw new Error('a check word is wrong');
    root = times(root, 2);
  }
};

/** The data words in their order: blocks are written word by word in turn. */
const dataOf = (words: readonly number[], sizes: readonly number[], all: number): number[] => {
  const own: number[][] = sizes.map(() => []);
  let next = 0;
  for (let at = 0; at < Math.max(...sizes); at += 1)
    for (const [block, size] of sizes.entries()) if (at < size) own[block]?.push(words[next++] ?? 0);
  const data = own.flat();
  const checks = (all - data.length) / sizes.length;
  for (let at = 0; at < checks; at += 1) for (const block of own) block.push(words[next++] ?? 0);
  for (const block of own) checkBlock(block, checks);
  return data;
};

const letters = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:';

const textOf = (data: readonly number[]): string => {
  const bits = data.map((word) => word.toString(2).padStart(8, '0')).join('');
  let at = 0;
  const take = (count: number): number => {
    const value = Number.parseInt(bits.slice(at, at + count) || '0', 2);
    at += count;
    return value;
  };
  let text = '';
  while (bits.length - at >= 4) {
    const mode = take(4);
    if (mode === 0) break;
    if (mode === 7) take(8);
    else if (mode === 1) {
      for (let left = take(10); left > 0; left -= 3)
        text += String(take([4, 7, 10][Math.min(left, 3) - 1] ?? 10)).padStart(Math.min(left, 3), '0');
    } else if (mode === 2) {
      for (let left = take(9); left > 0; left -= 2) {
        const value = take(left === 1 ? 6 : 11);
        text += left === 1 ? letters[value] : `${letters[Math.floor(value / 45)]}${letters[value % 45]}`;
      }
    } else if (mode === 4) for (let left = take(8); left > 0; left -= 1) text += String.fromCharCode(take(8));
    else throw new Error(`mode ${mode} is not read`);
  }
  return text;
};

/** What a code says. */
export const readCode = (code: LabelCode): string => {
  const version = (code.squares - 17) / 4;
  const { level, mask } = formatOf(code);
  const sizes = blocks[version - 1]?.[level];
  const all = wordsOfVersion[version - 1];
  if (sizes === undefined || all === undefined) throw new Error(`version ${version} is not read`);
  return textOf(dataOf(wordsIn(code, mask), sizes, all));
};
