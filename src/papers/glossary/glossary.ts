import { glossaryRows } from './generated/rows.ts';

/** A trade word with its explanation; `forms` are the ways it is written, itself among them. */
export interface GlossaryTerm {
  readonly word: string;
  readonly forms: readonly string[];
  readonly meaning: string;
}

/** A word's note in brackets, as in "offset (depth)", tells two alike apart and is not part of it. */
const withoutNote = (word: string): string => word.replace(/ \(.*\)$/, '');

/** Every trade word of the app, in the order of the glossary. */
export const glossary: readonly GlossaryTerm[] = glossaryRows.map(([word, also, meaning]) => ({
  word,
  forms: [withoutNote(word), ...also],
  meaning,
}));

const byForm: ReadonlyMap<string, GlossaryTerm> = new Map(
  glossary.flatMap((term) => term.forms.map((form): [string, GlossaryTerm] => [form, term])),
);

/** The term that is written so; exact, in capitals and small letters too. */
export const termOf = (form: string): GlossaryTerm | undefined => byForm.get(form);
