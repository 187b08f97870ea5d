const letters = 26;

const letter = (at: number): string => String.fromCharCode(65 + at);

/**
 * The mark that follows those given out: A, B … Z, AA, AB …; undefined after ZZ.
 *
 * @example nextMark(['A', 'B']) // 'C'
 */
export const nextMark = (marks: readonly string[]): string | undefined => {
  for (let at = 0; at < letters * (letters + 1); at += 1) {
    const mark = at < letters ? letter(at) : `${letter(Math.floor(at / letters) - 1)}${letter(at % letters)}`;
    if (!marks.includes(mark)) return mark;
  }
  return undefined;
};
