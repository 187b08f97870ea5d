import { type ReactNode, useMemo, useState } from 'react';
import type { Port } from '../../../../../core/boat/sheet.ts';
import { pastedIntoPort } from '../../../../../core/pasted/pasted-into-port.ts';
import type { PastedWay } from '../../../../../core/pasted/pasted-shape.ts';
import { readPasted } from '../../../../../core/pasted/read-pasted.ts';
import { pastedRows } from '../../../../../papers/kit/pasted-rows.ts';
import { ChoiceField } from '../../../forms/fields.tsx';
import { words } from './words.ts';

const ways = ['hears', 'sends', 'both'] as const;

/** Takes pasted or typed messages of a port: shows line by line what was understood and what not, then takes them in. */
export const PasteBox = ({ port, onPort }: { port: Port; onPort: (port: Port) => void }): ReactNode => {
  const [text, setText] = useState('');
  const [unsaid, setUnsaid] = useState<PastedWay>('hears');
  const lines = useMemo(() => readPasted(text), [text]);
  const rows = useMemo(() => pastedRows(lines), [lines]);
  const messages = useMemo(() => lines.flatMap(({ found }) => found), [lines]);
  const made = useMemo(() => pastedIntoPort(port, messages, unsaid), [port, messages, unsaid]);
  const isAsked = port.role === 'both' && messages.some(({ way }) => way === undefined);
  return (
    <div className="paste-box">
      <label className="form-field wide">
        <span>{words.add}</span>
        <textarea
          rows={3}
          value={text}
          placeholder={words.addHint}
          spellCheck={false}
          onChange={({ target }) => setText(target.value)}
        />
      </label>
      {isAsked ? (
        <ChoiceField
          label={words.unsaid}
          value={unsaid}
          choices={ways.map((way) => [way, words.unsaidWays[way]] as const)}
          onValue={setUnsaid}
        />
      ) : null}
      <ul className="pasted-rows" aria-live="polite">
        {rows.map(({ number, understood, doubts, whyNot }) => (
          <li key={number}>
            <span className="quiet">{words.line(number)}</span> {understood.join('; ')}
            {[...doubts, ...(whyNot === undefined ? [] : [whyNot])].map((sentence) => (
              <p key={sentence} className="paste-doubt">
                {understood.length === 0 ? `${words.notRead} ` : ''}
                {sentence}
              </p>
            ))}
          </li>
        ))}
        {made.whyNot.map((sentence) => (
          <li key={sentence} className="paste-doubt">
            {sentence}
          </li>
        ))}
      </ul>
      {made.taken === 0 ? null : (
        <button
          type="button"
          className="press-link"
          onClick={() => {
            onPort(made.port);
            setText('');
          }}
        >
          {words.takeIn(made.taken)}
        </button>
      )}
    </div>
  );
};
