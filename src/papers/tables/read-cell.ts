import { parseLength } from '../../core/units/parse-length.ts';
import type { CellChoice } from './table-shape.ts';

/** What was read in a cell, or a sentence on what is wrong with it. */
export type Read<Value> = { readonly value: Value } | { readonly wrong: string };

const plain = (text: string): string => text.trim().toLowerCase();

/** A choice by its value, by what it says, or by the beginning of that where only one begins so. */
export const readChoice = <Value extends string>(
  text: string,
  choices: readonly (CellChoice & { readonly value: Value })[],
): Read<Value> => {
  const asked = plain(text);
  const exact = choices.find(({ value, says }) => plain(value) === asked || plain(says) === asked);
  const begun = choices.filter(({ says }) => asked !== '' && plain(says).startsWith(asked));
  const found = exact ?? (begun.length === 1 ? begun[0] : undefined);
  if (found !== undefined) return { value: found.value };
  const among =
    choices.length === 0
      ? 'There is nothing to choose from yet.'
      : choices.length <= 12
        ? `Choose ${choices.map(({ says }) => says).join(', ')}.`
        : `Choose one of the ${choices.length} there are, for example ${choices[0]?.says}.`;
  return { wrong: `“${text.trim()}” is none of what may stand here. ${among}` };
};

/** A length in metres, typed in metres or in feet and inches; also to port, below the water or behind with a minus before it. */
export const readSpotM = (text: string): Read<number> => {
  const asked = text.trim().replace(/^[−–]/, '-');
  const below = asked.startsWith('-');
  const valueM = parseLength(below ? asked.slice(1) : asked);
  if (valueM === undefined) return { wrong: `“${text.trim()}” is no length. Write for example 2.35 m or 7 ft 9.` };
  return { value: below ? -valueM : valueM };
};

/** A length of more than nothing. */
export const readLengthM = (text: string): Read<number> => {
  const read = readSpotM(text);
  if ('wrong' in read || read.value > 0) return read;
  return { wrong: `A length of ${text.trim()} is none. Write for example 2.35 m or 7 ft 9.` };
};

/** A number with its unit, or without. */
export const readNumber = (
  text: string,
  { unit, least, most }: { readonly unit: string; readonly least: number; readonly most: number },
): Read<number> => {
  const bare = plain(text).replace(plain(unit), '').trim().replace(',', '.');
  const value = /^\d+(\.\d+)?$/.test(bare) ? Number(bare) : Number.NaN;
  if (value >= least && value <= most) return { value };
  return { wrong: `“${text.trim()}” is no number from ${least} to ${most}${unit === '' ? '' : ` ${unit}`}.` };
};

/** Yes or no, in words or as a tick. */
export const readYesNo = (text: string): Read<boolean> => {
  const asked = plain(text);
  if (['yes', 'y', 'true', 'x', '1', '✓'].includes(asked)) return { value: true };
  if (['no', 'n', 'false', '', '0', '-'].includes(asked)) return { value: false };
  return { wrong: `“${text.trim()}” is neither yes nor no.` };
};

/** A name that something may have. */
export const readName = (text: string): Read<string> => {
  const value = text.trim().replace(/\s+/g, ' ');
  if (value === '') return { wrong: 'A name cannot be empty.' };
  return value.length > 200 ? { wrong: 'A name has at most 200 letters.' } : { value };
};
