import { type ReactNode, useState } from 'react';
import { askingWords } from '../../../../../core/proof/asking/asking.ts';
import { TextField } from '../../../forms/fields.tsx';
import { live } from './live-store.ts';
import { words } from './words.ts';

/** Units are asked who they are only after a person has read what is sent and said yes, each time. */
export const AskBlock = ({ isAsking }: { isAsking: boolean }): ReactNode => {
  const [line, setLine] = useState('');
  const [thorough, setThorough] = useState(false);
  const [isShown, setIsShown] = useState(false);
  if (isAsking) return <p role="status">{words.ask.asking}</p>;
  const name = line.trim();
  return (
    <details className="form-part">
      <summary>{words.ask.heading}</summary>
      <div className="form-fields">
        <TextField label={words.ask.line} value={line} hint={words.ask.lineHint} longest={15} onValue={setLine} />
      </div>
      <label className="live-record">
        <input type="checkbox" checked={thorough} onChange={({ target }) => setThorough(target.checked)} />
        {words.ask.thorough}
      </label>
      {isShown && name !== '' ? (
        <div role="status">
          <p className="live-asked">{askingWords(name, thorough)}</p>
          <button
            type="button"
            className="press-link"
            onClick={() => {
              setIsShown(false);
              void live.askUnits(name, thorough);
            }}
          >
            {words.ask.yes}
          </button>{' '}
          <button type="button" className="press-link" onClick={() => setIsShown(false)}>
            {words.ask.no}
          </button>
        </div>
      ) : (
        <button type="button" className="press-link" disabled={name === ''} onClick={() => setIsShown(true)}>
          {words.ask.show}
        </button>
      )}
    </details>
  );
};
