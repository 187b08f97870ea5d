interface Shape {
  /** columns in all */
  readonly width: number;
  /** in front of the first line; the others are set under its end */
  readonly lead: string;
}

/** Breaks words into lines of a width, the later ones set in under the end of the lead. A longer word gets its own line; hard spaces are not broken at, and come out plain. */
export const textLines = (text: string, { width, lead }: Shape): string[] => {
  const lines: string[] = [];
  let line = lead;
  let isFresh = true;
  for (const word of text.split(' ')) {
    if (!isFresh && line.length + 1 + word.length > width) {
      lines.push(line);
      line = ' '.repeat(lead.length);
      isFresh = true;
    }
    line += isFresh ? word : ` ${word}`;
    isFresh = false;
  }
  return [...lines, line].map((done) => done.replaceAll('\u00a0', ' '));
};
