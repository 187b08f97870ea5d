const leastDigits = 2;

const numberOf = (label: string): number => Number(/^C(\d+)$/.exec(label)?.[1] ?? 0);

/**
 * The labels that lines without one get next, in the order of the lines: C and a number higher than any that was ever handed
 * out, so that no label is used twice, also where its line is gone. Two digits at least, and as many as the last of them, so
 * that they sort.
 *
 * @example nextLabels({ 'drop:a~b': 'C07' }, ['drop:a~b', 'drop:a~c']) // { 'drop:a~c': 'C08' }
 */
export const nextLabels = (
  given: Readonly<Record<string, string>>,
  lines: readonly string[],
): Readonly<Record<string, string>> => {
  const last = Math.max(0, ...Object.values(given).map(numberOf));
  const bare = lines.filter((line) => !Object.hasOwn(given, line));
  const digits = Math.max(leastDigits, String(last + bare.length).length);
  return Object.fromEntries(bare.map((line, at) => [line, `C${String(last + 1 + at).padStart(digits, '0')}`]));
};
