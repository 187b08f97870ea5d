import { type ReactNode, useEffect, useState } from 'react';
import type { Refusal } from '../workers/protocol.ts';
import { type BoatOnList, fetchBoats } from './fetch-boats.ts';
import { RefusalView } from './refusal-view.tsx';
import { hashOf } from './route.ts';
import { OpenFile } from './top-bar.tsx';

const BoatRow = ({ boat }: { boat: BoatOnList }): ReactNode => (
  <li>
    <a href={hashOf({ page: 'boat', id: boat.id, step: 'lines' })}>
      <span className="boat-name">{boat.name}</span>
      <span className="boat-says">{boat.says}</span>
    </a>
  </li>
);

/** The boats of the folder that was opened; the first thing one sees. */
export const BoatsPage = ({ onFile }: { onFile: (file: File) => void }): ReactNode => {
  const [boats, setBoats] = useState<readonly BoatOnList[] | undefined>(undefined);
  const [refusal, setRefusal] = useState<Refusal | undefined>(undefined);
  useEffect(() => {
    let isGone = false;
    void fetchBoats().then((found) => {
      if (isGone) return;
      if ('boats' in found) setBoats(found.boats);
      else setRefusal(found.refusal);
    });
    return () => {
      isGone = true;
    };
  }, []);
  return (
    <main className="boats-page">
      <h2>Boats in this folder</h2>
      {refusal === undefined ? null : <RefusalView refusal={refusal} />}
      {boats === undefined ? null : (
        <ul className="boats">
          {boats.map((boat) => (
            <BoatRow key={boat.id} boat={boat} />
          ))}
        </ul>
      )}
      {boats?.length === 0 ? <p>There is no boat in this folder yet.</p> : null}
      <p className="quiet">
        Or <OpenFile onFile={onFile}>open a boat file</OpenFile> from elsewhere on this machine, or drop it on the page.
        It is read here and goes nowhere.
      </p>
    </main>
  );
};
