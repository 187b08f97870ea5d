const unitMs: readonly (readonly [words: RegExp, perUnitMs: number])[] = [
  [/^(ms|msec|millisec\w*)$/i, 1],
  [/^(s|sec|secs|second|seconds)$/i, 1000],
  [/^(min|minute|minutes)$/i, 60_000],
];

const figure =
  /(?<![\w.,-])(\d{1,5}(?:[.,]\d{1,3})?)\s?(hz|ms|msec|milliseconds?|s|sec|secs|seconds?|min|minutes?)(?!\w)/gi;

/** The longest interval a sheet takes, ms: a day. */
const longestMs = 86_400_000;

const msOf = (value: number, unit: string): number | undefined => {
  if (value <= 0) return undefined;
  const ms = /^hz$/i.test(unit) ? 1000 / value : value * (unitMs.find(([words]) => words.test(unit))?.[1] ?? 0);
  const rounded = Math.round(ms);
  return rounded > 0 && rounded <= longestMs ? rounded : undefined;
};

/**
 * How often something comes by a line of text, ms; undefined where it does not say, or says several.
 *
 * @example intervalIn('PGN 127250 Vessel Heading 10 Hz') // 100
 */
export const intervalIn = (line: string): number | undefined => {
  const found = [...line.matchAll(figure)].flatMap(
    ([, value = '', unit = '']) => msOf(Number(value.replace(',', '.')), unit) ?? [],
  );
  const [only, ...more] = new Set(found);
  return more.length === 0 ? only : undefined;
};
