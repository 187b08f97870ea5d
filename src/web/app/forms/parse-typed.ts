import { words } from './words.ts';

/** Reads what was typed: a value, or undefined where it is none. */
export type Parse<Value> = (text: string) => Value | undefined;

/** A text that says something. */
export const parseName: Parse<string> = (text) => {
  const plain = text.trim();
  return plain === '' || plain.length > 200 ? undefined : plain;
};

/** A whole number of few things. */
export const parseCount: Parse<number> = (text) => (/^\s*\d{1,2}\s*$/.test(text) ? Number(text) : undefined);

/** A number of hours or the like, nothing below nothing. */
export const parseAmount: Parse<number> = (text) =>
  /^\s*\d+(?:[.,]\d+)?\s*$/.test(text) ? Number(text.trim().replace(',', '.')) : undefined;

export const wrongNumber = words.wrongNumber;
