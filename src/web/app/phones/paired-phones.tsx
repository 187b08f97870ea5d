import { type ReactNode, useState } from 'react';
import { agoWords, dayWords } from './ago-words.ts';
import { type PairedPhone, phones } from './phones-store.ts';
import { words } from './words.ts';

const PhoneRow = ({ phone }: { phone: PairedPhone }): ReactNode => {
  const [isAsking, setIsAsking] = useState(false);
  const { id, name, pairedAtMs, lastSeenMs } = phone;
  return (
    <li className="phones-row">
      <p>
        <strong>{name}</strong>{' '}
        <span className="row-fact">
          {words.since(dayWords(pairedAtMs))}, {words.seen(agoWords(lastSeenMs, Date.now()))}
        </span>
      </p>
      {isAsking ? (
        <div className="phones-sure">
          <p role="status">{words.sure(name)}</p>
          <button type="button" className="press-link" onClick={() => void phones.revoke(id)}>
            {words.yes(name)}
          </button>
          <button type="button" className="press-link" onClick={() => setIsAsking(false)}>
            {words.no}
          </button>
        </div>
      ) : (
        <button
          type="button"
          className="press-link"
          aria-label={words.revokeNamed(name)}
          onClick={() => setIsAsking(true)}
        >
          {words.revoke}
        </button>
      )}
    </li>
  );
};

/** The paired phones, the latest first, each of which can be revoked. */
export const PairedPhones = ({ devices }: { devices: readonly PairedPhone[] }): ReactNode => (
  <>
    <h3>{words.paired}</h3>
    {devices.length === 0 ? <p className="quiet">{words.nobody}</p> : null}
    <ul>
      {[...devices].reverse().map((phone) => (
        <PhoneRow key={phone.id} phone={phone} />
      ))}
    </ul>
  </>
);
