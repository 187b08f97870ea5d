/** The same words in any language: sentences for sentences, the same values for those that hold some, any number of words to be found by. */
export type Words<Of> = {
  readonly [Key in keyof Of]: Of[Key] extends string
    ? string
    : Of[Key] extends (...given: infer Given) => string
      ? (...given: Given) => string
      : Of[Key] extends readonly string[]
        ? readonly string[]
        : Words<Of[Key]>;
};

/** What one part of the app says: in English, which is always complete, and in as many other languages as it was put into. */
export type Written<Of> = { readonly en: Of } & Readonly<Record<string, Words<Of>>>;

/** The words in one language, by its tag as in the `lang` of a page; in English where they are not written in it. */
export const spokenIn = <Of>(language: string, written: Written<Of>): Words<Of> =>
  // reason: English is of its own shape, which the compiler cannot see of a shape made by a mapping
  written[language] ?? written[language.split('-')[0] ?? 'en'] ?? (written.en as Words<Of>);

const languageOfPage = (): string => (typeof document === 'undefined' ? 'en' : document.documentElement.lang);

/**
 * The words of one part of the app in the language of the page. Each folder of the app holds its English in `words.en.ts`
 * and nothing else; another language is a file of the same shape beside it, handed in here.
 *
 * @example export const words = spoken({ en });
 */
export const spoken = <Of>(written: Written<Of>): Words<Of> => spokenIn(languageOfPage(), written);
