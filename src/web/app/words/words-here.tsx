import type { ReactNode } from 'react';
import { TermButton } from './term-button.tsx';
import { useGlossary } from './use-glossary.ts';
import { words } from './words.ts';

/**
 * The trade words of texts that stand in buttons or links, where they cannot be buttons themselves: in one line under
 * the block, each to be asked what it means.
 */
export const WordsHere = ({
  texts,
  names = [],
}: {
  texts: readonly string[];
  names?: readonly string[];
}): ReactNode => {
  const terms = useGlossary()?.termsIn(texts, names) ?? [];
  if (terms.length === 0) return null;
  return (
    <p className="words-here">
      {words.here}{' '}
      {terms.map((term, at) => (
        <span key={term.word}>
          {at === 0 ? null : ' · '}
          <TermButton term={term}>{term.word}</TermButton>
        </span>
      ))}
    </p>
  );
};
