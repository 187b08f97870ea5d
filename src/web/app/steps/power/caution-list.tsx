import type { ReactNode } from 'react';
import type { CautionWords } from '../../../../papers/power/caution-words.ts';
import { useWords } from '../../words/units.ts';
import './power-block.css';

/** Cautions where the step they belong to is told of, never apart from it. */
export const CautionList = ({ cautions, where }: { cautions: readonly CautionWords[]; where: string }): ReactNode => {
  const words = useWords();
  return cautions.length === 0 ? null : (
    <ul className="cautions" aria-label={`Cautions ${where}`}>
      {cautions.map(({ id, title, says, decides }) => (
        <li key={id} className="caution">
          <strong>{title}.</strong> {words(says)}
          {decides === undefined ? null : <span className="quiet"> Decided by {decides}.</span>}
        </li>
      ))}
    </ul>
  );
};
