import * as z from 'zod';
import { bareSchema } from '../../src/core/boat/schema-at.ts';

/** A whole number below another, as if by chance. */
export type Lot = (below: number) => number;

/** Texts and numbers by the name of the field in which they stand. */
export type Pool = ReadonlyMap<string, readonly (string | number)[]>;

/** Numbers at the edges of what a computer and a person can mean. */
export const extremeNumbers: readonly number[] = [
  0,
  -0,
  1,
  -1,
  0.1,
  1e-9,
  5e-324,
  1e15,
  1e21,
  1e308,
  -1e308,
  2 ** 31,
  2 ** 53,
  2 ** 53 + 2,
  59.999_999_9,
  360,
  1 / 3,
];

/** Texts that trip programs: names of prototypes, odd letters, direction marks, line ends, lengths. */
export const oddTexts: readonly string[] = [
  '',
  ' ',
  '__proto__',
  'constructor',
  'toString',
  'hasOwnProperty',
  'undefined',
  'null',
  'NaN',
  '-',
  '.',
  '..',
  'a.b',
  'a.b.c',
  '../../etc',
  'a~b',
  'a:b~c',
  '\u0000',
  '\u202Eedoc',
  '\u{1F6E5}\uFE0F',
  'e\u0301',
  '\uD800',
  'İıſK',
  '\n',
  '<script>',
  '"quoted"',
  '\\',
  '%s',
  '0',
  'Ω',
  '१२',
  'x'.repeat(64),
  'x'.repeat(65),
  'long '.repeat(4000),
];

const oneOf = <Value>(values: readonly Value[], lot: Lot): Value | undefined => values[lot(values.length)];

const numberOf = (schema: z.core.$ZodType, lot: Lot): number => {
  const { minValue, maxValue } = schema as { minValue?: number | null; maxValue?: number | null };
  const [least, most] = [minValue ?? -1000, maxValue ?? 1000];
  const among = least + (most - least) * (lot(1001) / 1000);
  const edges = [least, most, Math.round(among), among, least + 1e-9, ...extremeNumbers];
  return edges[lot(lot(3) === 0 ? edges.length : 4)] ?? 0;
};

/**
 * A value as a schema wants it, grown by chance: texts and numbers as they stand elsewhere under the same name, or at the
 * edges of what is allowed; parts that may be absent are now and then, and now and then something just beside.
 */
export const growValue = (
  schema: z.core.$ZodType,
  { name, lot, pool, depth = 0 }: { name: string; lot: Lot; pool: Pool; depth?: number },
): unknown => {
  const bare = bareSchema(schema);
  const below = (inner: z.core.$ZodType, innerName = name): unknown =>
    growValue(inner, { name: innerName, lot, pool, depth: depth + 1 });
  if (depth > 12) return null;
  if (bare instanceof z.ZodObject) {
    const entries = Object.entries(bare.shape as Readonly<Record<string, z.core.$ZodType>>).flatMap(([key, inner]) => {
      const isOptional = inner instanceof z.ZodExactOptional || inner instanceof z.ZodOptional;
      return isOptional && lot(3) > 0 ? [] : [[key, below(inner, key)]];
    });
    return Object.fromEntries(entries);
  }
  if (bare instanceof z.ZodArray) return Array.from({ length: lot(4) }, () => below(bare.element));
  if (bare instanceof z.ZodTuple) return bare.def.items.map((item) => below(item));
  if (bare instanceof z.ZodUnion) return below(oneOf(bare.options, lot) ?? bare.options[0] ?? bare);
  if (bare instanceof z.ZodEnum) return oneOf(bare.options, lot);
  if (bare instanceof z.ZodLiteral) return oneOf([...bare.values], lot);
  if (bare instanceof z.ZodBoolean) return lot(2) === 0;
  if (bare instanceof z.ZodRecord) {
    const key =
      bare.keyType instanceof z.ZodEnum
        ? oneOf(bare.keyType.options, lot)
        : oneOf(pool.get(`${name} key`) ?? ['x'], lot);
    return { [String(key)]: below(bare.valueType) };
  }
  const known = pool.get(name);
  if (known !== undefined && lot(4) > 0) return oneOf(known, lot);
  if (bare instanceof z.ZodNumber) return numberOf(bare, lot);
  return lot(6) === 0 ? oneOf(oddTexts, lot) : 'a-word';
};
