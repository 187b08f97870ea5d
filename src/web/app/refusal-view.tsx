import type { ReactNode } from 'react';
import type { Refusal } from '../workers/protocol.ts';
import { words } from './words.ts';

/** A file that was turned away: what is wrong, where, what to do. What was open stays open. */
export const RefusalView = ({ refusal, onClose }: { refusal: Refusal; onClose?: () => void }): ReactNode => (
  <section className="refusal" role="alert">
    <h2>{refusal.says}</h2>
    {refusal.place === undefined ? null : (
      <p>
        {words.where} <code>{refusal.place}</code>
      </p>
    )}
    <p>{refusal.whatToDo}</p>
    {refusal.more?.map((line) => (
      <p key={line}>{line}</p>
    ))}
    {onClose === undefined ? null : (
      <button type="button" className="refusal-button" onClick={onClose}>
        {words.backToBoat}
      </button>
    )}
  </section>
);
