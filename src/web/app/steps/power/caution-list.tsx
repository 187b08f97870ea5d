import type { ReactNode } from 'react';
import type { CautionWords } from '../../../../papers/power/caution-words.ts';
import { useWords } from '../../words/units.ts';
import './power-block.css';
import { words } from './words.ts';

/** Cautions where the step they belong to is told of, never apart from it. */
export const CautionList = ({
  cautions,
  where,
}: {
  cautions: readonly CautionWords[];
  where: keyof typeof words.cautions;
}): ReactNode => {
  const say = useWords();
  return cautions.length === 0 ? null : (
    <ul className="cautions" aria-label={words.cautions[where]}>
      {cautions.map(({ id, title, says, decides }) => (
        <li key={id} className="caution">
          <strong>{title}.</strong> {say(says)}
          {decides === undefined ? null : <span className="quiet">{words.decidedBy(decides)}</span>}
        </li>
      ))}
    </ul>
  );
};
