import { onlyWhere } from './found-in.ts';
import { type GlossaryTerm, glossary, termOf } from './glossary.ts';

/** A stretch of text; with `term` where it is a trade word to be explained. */
export interface TextPiece {
  readonly text: string;
  readonly term?: GlossaryTerm;
}

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** The plural of a form, where it has one: what ends in s, a capital or a figure has none. */
const pluralOf = (form: string): string[] => {
  if (!/[a-rt-z]$/.test(form)) return /bus$/.test(form) ? [`${form}es`] : [];
  return [/[^aeiou]y$/.test(form) ? `${form.slice(0, -1)}ies` : `${form}s`];
};

interface Form {
  readonly form: string;
  readonly term: GlossaryTerm;
}

const forms: ReadonlyMap<string, Form> = new Map(
  glossary.flatMap((term) =>
    term.forms.flatMap((form) =>
      [form, ...pluralOf(form)].map((written): [string, Form] => [written.toLowerCase(), { form: written, term }]),
    ),
  ),
);

/** Every form, longest first, so that "typical sheet" is found before "sheet"; never inside a longer word or an id. */
const anyForm = new RegExp(
  `(?<![\\p{L}\\p{N}-])(?:${[...forms.keys()]
    .sort((a, b) => b.length - a.length)
    .map(escaped)
    .join('|')})(?![\\p{L}\\p{N}-])`,
  'giu',
);

/** Abbreviations must be written as they are: a NAME is no name. */
const isWrittenSo = (found: string, form: string): boolean =>
  found === form || (form === form.toLowerCase() && found.toLowerCase() === form);

const singularOf = ({ form, term }: Form): string =>
  term.forms.find((one) => one === form || pluralOf(one).includes(form)) ?? form;

/** Whether a word found at a place is the trade word, and not the everyday one that is written alike. */
const isMeant = (text: string, { at, found, entry }: { at: number; found: string; entry: Form }): boolean => {
  const own = singularOf(entry);
  if (!onlyWhere.has(own)) return true;
  const pattern = onlyWhere.get(own);
  if (pattern === undefined) return false;
  return [...text.matchAll(new RegExp(pattern, 'gi'))].some(
    (match) => match.index <= at && at + found.length <= match.index + match[0].length,
  );
};

const piecesOf = (text: string, told: Set<string>): TextPiece[] => {
  const pieces: TextPiece[] = [];
  let from = 0;
  for (const match of text.matchAll(anyForm)) {
    const [found] = match;
    const entry = forms.get(found.toLowerCase());
    if (entry === undefined || told.has(entry.term.word) || !isWrittenSo(found, entry.form)) continue;
    if (!isMeant(text, { at: match.index, found, entry })) continue;
    told.add(entry.term.word);
    if (match.index > from) pieces.push({ text: text.slice(from, match.index) });
    pieces.push({ text: found, term: entry.term });
    from = match.index + found.length;
  }
  if (from < text.length) pieces.push({ text: text.slice(from) });
  return pieces;
};

/**
 * The texts of one block cut into pieces, the first time each trade word stands in the block marked with its term. The
 * pieces of a text joined together are the text.
 *
 * @example explain(['The drop is long.'])[0] // 'The ', 'drop' with its term, ' is long.'
 */
export const explain = (texts: readonly string[]): TextPiece[][] => {
  const told = new Set<string>();
  return texts.map((text) => piecesOf(text, told));
};

/**
 * Names that stand alone, as in a table, cut like texts; a name that is a trade word as a whole is marked even where it
 * is an everyday word as well.
 */
export const explainNames = (names: readonly string[]): TextPiece[][] => {
  const told = new Set<string>();
  return names.map((text) => {
    const term = termOf(text);
    if (term === undefined || told.has(term.word)) return piecesOf(text, told);
    told.add(term.word);
    return [{ text, term }];
  });
};

/** The trade words in some texts and names, each once, in the order they are met. */
export const termsIn = (texts: readonly string[], names: readonly string[] = []): GlossaryTerm[] => [
  ...new Set([...explainNames(names), ...explain(texts)].flat().flatMap(({ term }) => term ?? [])),
];
