import { type ReactNode, useEffect, useState } from 'react';
import './kept-here.css';
import { useKeptPage } from './kept-page.ts';
import { type Promised, promisedSoFar } from './persistence.ts';
import { words } from './words.ts';

const pageWords = { fetching: words.fetching, kept: words.offline, barred: words.noOffline } as const;

/** Under the list: what the browser has promised of the boats, and how the app itself is kept. */
export const KeptNotes = ({ hasBoats }: { hasBoats: boolean }): ReactNode => {
  const page = useKeptPage();
  const [promised, setPromised] = useState<Promised | undefined>(undefined);
  useEffect(() => {
    let isGone = false;
    void promisedSoFar().then((found) => {
      if (!isGone) setPromised(found);
    });
    return () => {
      isGone = true;
    };
  }, []);
  return (
    <div className="kept-notes quiet">
      {!hasBoats || promised === undefined ? null : <p>{promised === 'promised' ? words.promised : words.mayGo}</p>}
      <p role="status">{pageWords[page.state]}</p>
      {page.take === undefined ? null : (
        <p role="status">
          {words.newVersion}{' '}
          <button type="button" className="press-link" onClick={page.take}>
            {words.takeIt}
          </button>
        </p>
      )}
    </div>
  );
};
