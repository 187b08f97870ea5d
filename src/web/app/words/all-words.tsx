import type { ReactNode } from 'react';
import type { GlossaryTerm } from '../../../papers/glossary/glossary.ts';
import { useGlossary } from './use-glossary.ts';
import { words } from './words.ts';

/** Words with what they mean, one under the other. */
export const WordList = ({ terms }: { terms: readonly GlossaryTerm[] }): ReactNode => (
  <dl className="word-list">
    {terms.map(({ word, meaning }) => (
      <div key={word}>
        <dt>{word}</dt>
        <dd>{meaning}</dd>
      </div>
    ))}
  </dl>
);

/** Every trade word the app uses, shut until asked for. */
export const AllWords = (): ReactNode => (
  <details className="all-words">
    <summary>{words.all}</summary>
    <WordList terms={useGlossary()?.glossary ?? []} />
  </details>
);
