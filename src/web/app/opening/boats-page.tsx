import { type ReactNode, useEffect, useState } from 'react';
import type { BoatOnList, Shelf } from '../../../core/boat-store-shape.ts';
import type { Refusal } from '../../workers/protocol.ts';
import { RefusalView } from '../refusal-view.tsx';
import { hashOf } from '../route.ts';
import { store } from '../store/the-store.ts';
import { OpenFile } from '../top-bar.tsx';
import { usePart } from '../use-part.ts';
import { copyBoat } from './copy-boat.ts';
import { words } from './words.ts';

const bringNewBoat = () => import('./new-boat/new-boat.tsx');

type OnCopy = (boat: BoatOnList) => void;

const BoatRow = ({ boat, onCopy }: { boat: BoatOnList; onCopy: OnCopy }): ReactNode => (
  <li className="boat-row">
    <a href={hashOf({ page: 'boat', id: boat.id, step: 'lines' })}>
      <span className="boat-name">{boat.name}</span>
      <span className="boat-says">
        {boat.says} <span className="boat-file">{words.fileOf(boat.id)}</span>
      </span>
    </a>
    <button type="button" className="copy-button" aria-label={words.copyOf(boat.name)} onClick={() => onCopy(boat)}>
      {words.copy}
    </button>
  </li>
);

const DemoRow = ({ boat, onCopy }: { boat: BoatOnList; onCopy: OnCopy }): ReactNode => (
  <li className="boat-row">
    <button type="button" className="demo-button" onClick={() => onCopy(boat)}>
      <span className="boat-name">{boat.name}</span>
      <span className="boat-says">{boat.says}</span>
    </button>
  </li>
);

/** The boats of a shelf, once they are there; asked for only where `isWanted`. */
const useShelf = (shelf: Shelf, isWanted: boolean, onRefusal: (refusal: Refusal) => void) => {
  const [boats, setBoats] = useState<readonly BoatOnList[]>();
  useEffect(() => {
    if (!isWanted) return;
    let isGone = false;
    void store.list(shelf).then((found) => {
      if (isGone) return;
      if ('boats' in found) setBoats(found.boats);
      else onRefusal(found.refusal);
    });
    return () => {
      isGone = true;
    };
  }, [shelf, isWanted, onRefusal]);
  return boats;
};

/** The demo boats, where the folder has no boat. */
const DemoBoats = ({ demos, onCopy }: { demos: readonly BoatOnList[] | undefined; onCopy: OnCopy }): ReactNode => (
  <>
    <p className="first-boat">{words.demo}</p>
    {demos === undefined ? null : (
      <ul className="boats">
        {demos.map((boat) => (
          <DemoRow key={boat.id} boat={boat} onCopy={onCopy} />
        ))}
      </ul>
    )}
  </>
);

/** The boats of the folder that was opened; the first thing one sees. */
export const BoatsPage = ({ onFile }: { onFile: (file: File) => void }): ReactNode => {
  const [refusal, setRefusal] = useState<Refusal | undefined>(undefined);
  const boats = useShelf('boats', true, setRefusal);
  const isEmpty = boats?.length === 0;
  const starting = usePart(bringNewBoat);
  const demos = useShelf('demos', isEmpty, setRefusal);
  const copyFrom = (shelf: Shelf, nameOf: (name: string) => string) => (boat: BoatOnList) => {
    void copyBoat(store, shelf, { id: boat.id, name: nameOf(boat.name) }).then((made) => {
      if ('refusal' in made) setRefusal(made.refusal);
      else window.location.hash = hashOf({ page: 'boat', id: made.id, step: 'lines' });
    });
  };
  return (
    <main className="boats-page">
      <h2>{words.inFolder}</h2>
      {refusal === undefined ? null : <RefusalView refusal={refusal} />}

      {isEmpty ? <p className="first-boat">{words.nothingYet}</p> : null}
      {boats === undefined || isEmpty ? null : (
        <ul className="boats">
          {boats.map((boat) => (
            <BoatRow key={boat.id} boat={boat} onCopy={copyFrom('boats', words.copyName)} />
          ))}
        </ul>
      )}
      {boats === undefined || starting === undefined ? null : <starting.NewBoat />}
      {isEmpty ? <DemoBoats demos={demos} onCopy={copyFrom('demos', (name) => name)} /> : null}
      <p className="quiet">
        {words.or}
        <OpenFile onFile={onFile}>{words.openFile}</OpenFile>
        {words.fromElsewhere}
      </p>
    </main>
  );
};
