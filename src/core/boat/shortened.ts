/**
 * A text of the file as a sentence quotes it: cut where it is longer than any id may be, so that the sentence stays one.
 *
 * @example shortened('abcdef', 3) // 'abc…'
 */
export const shortened = (text: string, mostCharacters = 64): string =>
  text.length > mostCharacters ? `${text.slice(0, mostCharacters)}…` : text;
