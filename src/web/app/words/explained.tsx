import { type ReactNode, useMemo } from 'react';
import type { TextPiece } from '../../../papers/glossary/explain.ts';
import { TermButton } from './term-button.tsx';
import { useWords } from './units.ts';
import { useGlossary } from './use-glossary.ts';

const pieceView = ({ text, term }: TextPiece, at: number): ReactNode =>
  term === undefined ? (
    text
  ) : (
    // a text has no ids of its own; its pieces stay where they are while it stands
    <TermButton key={`${at} ${text}`} term={term}>
      {text}
    </TermButton>
  );

/** Texts with their trade words made buttons by the part of the glossary given, or as they are without it. */
const viewsOf = (
  texts: readonly string[],
  explain: ((texts: readonly string[]) => TextPiece[][]) | undefined,
): readonly ReactNode[] => explain?.(texts).map((pieces) => pieces.map(pieceView)) ?? texts;

/** The texts of one block, each with the first of every trade word in the block to be asked what it means. */
export const useExplained = (texts: readonly string[]): readonly ReactNode[] => {
  const words = useWords();
  const glossary = useGlossary();
  const all = JSON.stringify(texts);
  // the texts and not their list decide: most lists are made anew each time
  // biome-ignore lint/correctness/useExhaustiveDependencies: see above
  return useMemo(() => viewsOf(texts.map(words), glossary?.explain), [all, words, glossary]);
};

/** Names in a table, each a trade word or with one in it, as `useExplained` has texts. */
export const useExplainedNames = (names: readonly string[]): readonly ReactNode[] => {
  const words = useWords();
  const glossary = useGlossary();
  const all = JSON.stringify(names);
  // biome-ignore lint/correctness/useExhaustiveDependencies: as above
  return useMemo(() => viewsOf(names.map(words), glossary?.explainNames), [all, words, glossary]);
};

/** One text that is a block of its own. */
export const Explained = ({ text }: { text: string }): ReactNode => useExplained([text]);

/** One word that is explained although it is an everyday word too; as it stands where the glossary has none. */
export const Word = ({ of, children }: { of: string; children: ReactNode }): ReactNode => {
  const term = useGlossary()?.termOf(of);
  return term === undefined ? children : <TermButton term={term}>{children}</TermButton>;
};
