import type { ReactNode } from 'react';
import type { Change } from '../../../../../core/kit/changes-between.ts';
import { words } from './words.ts';

const valueWords = ({ value }: Change): string => {
  if (value === undefined) return words.noneOfIt;
  return typeof value === 'object' ? words.anew : String(value);
};

/** All by which one unit differs from its sheet, each to be let go again. */
export const UnitChanges = ({
  changes,
  onTakeBack,
}: {
  changes: readonly Change[];
  onTakeBack: (path: string) => void;
}): ReactNode =>
  changes.length === 0 ? (
    <p className="quiet">{words.noChanges}</p>
  ) : (
    <ul className="sheet-messages" aria-label={words.changes}>
      {changes.map((change) => {
        const where = change.path.split('.').join(' › ');
        return (
          <li key={change.path}>
            <span>
              {where}: {valueWords(change)} <span className="quiet">{words.known[change.how]}</span>
            </span>
            <button
              type="button"
              className="press-link"
              aria-label={words.asInSheetOf(where)}
              onClick={() => onTakeBack(change.path)}
            >
              {words.asInSheet}
            </button>
          </li>
        );
      })}
    </ul>
  );
