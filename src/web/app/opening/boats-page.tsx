import { type ReactNode, useCallback, useEffect, useState } from 'react';
import type { BoatOnList, Shelf } from '../../../core/boat-store-shape.ts';
import type { Refusal } from '../../workers/protocol.ts';
import { words as hereWords } from '../kept-here/words.ts';
import { RefusalView } from '../refusal-view.tsx';
import { hashOf } from '../route.ts';
import { store } from '../store/the-store.ts';
import { OpenFile } from '../top-bar.tsx';
import { usePart } from '../use-part.ts';
import { copyBoat } from './copy-boat.ts';
import { lastStep } from './last-step.ts';
import { words } from './words.ts';

const isHere = store.kind === 'browser';
/** Where the boats of this page are, in words. */
const said = isHere ? { ...hereWords, inPlace: hereWords.inBrowser } : { ...words, inPlace: words.inFolder };

const bringKeptHere = () => import('../kept-here/kept-here.ts');
const bringNothing = async () => undefined;
const bringAway = () => import('./row-away.tsx');

/** What a list of boats in this browser has more than one of a folder. */
const useKeptHere = () =>
  usePart<typeof import('../kept-here/kept-here.ts') | undefined>(isHere ? bringKeptHere : bringNothing);

/** How a boat of a folder is taken off its list. */
const useAway = () => usePart<typeof import('./row-away.tsx') | undefined>(isHere ? bringNothing : bringAway);

/** Takes the page, and the keyboard, to the hulls a boat is made from. */
const goToHulls = (): void => {
  const first = document.querySelector<HTMLElement>('.hulls input');
  first?.closest('.starting')?.scrollIntoView({ block: 'start' });
  first?.focus({ preventScroll: true });
};

const bringNewBoat = () => import('./new-boat/new-boat.tsx');

type OnCopy = (boat: BoatOnList) => void;

const BoatRow = ({ boat, onCopy, tools }: { boat: BoatOnList; onCopy: OnCopy; tools?: ReactNode }): ReactNode => (
  <li className="boat-row">
    <a href={hashOf({ page: 'boat', id: boat.id, step: lastStep(boat.id) })}>
      <span className="boat-name">{boat.name}</span>
      <span className="boat-says">
        {boat.says} {isHere ? null : <span className="boat-file">{words.fileOf(boat.id)}</span>}
      </span>
    </a>
    <button type="button" className="copy-button" aria-label={words.copyOf(boat.name)} onClick={() => onCopy(boat)}>
      {words.copy}
    </button>
    {tools}
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
  const [looks, setLooks] = useState(0);
  const [boats, setBoats] = useState<readonly BoatOnList[]>();
  // biome-ignore lint/correctness/useExhaustiveDependencies: looked at again when asked to
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
  }, [shelf, isWanted, looks, onRefusal]);
  const lookAgain = useCallback(() => setLooks((times) => times + 1), []);
  return [boats, lookAgain] as const;
};

/** The demo boats, where the folder has no boat. */
const DemoBoats = ({ demos, onCopy }: { demos: readonly BoatOnList[] | undefined; onCopy: OnCopy }): ReactNode => (
  <>
    <p className="first-boat">{said.demo}</p>
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
  const [boats, lookAgain] = useShelf('boats', true, setRefusal);
  const isEmpty = boats?.length === 0;
  const starting = usePart(bringNewBoat);
  // a folder is given the demo boats when it is made; a browser has them beside its own
  const hasDemos = isEmpty || (isHere && boats !== undefined);
  const [demos] = useShelf('demos', hasDemos, setRefusal);
  const here = useKeptHere();
  const copyFrom = (shelf: Shelf, nameOf: (name: string) => string) => (boat: BoatOnList) => {
    void copyBoat(store, shelf, { id: boat.id, name: nameOf(boat.name) }).then((made) => {
      if ('refusal' in made) setRefusal(made.refusal);
      else window.location.hash = hashOf({ page: 'boat', id: made.id, step: 'boat' });
    });
  };
  const away = useAway();
  const [goneSays, setGoneSays] = useState('');
  const onGone = (says: string): void => {
    setGoneSays(says);
    lookAgain();
  };
  const toolsOf = (boat: BoatOnList): { tools?: ReactNode } => {
    if (here !== undefined) return { tools: <here.RowTools boat={boat} onRefusal={setRefusal} onGone={lookAgain} /> };
    return away === undefined ? {} : { tools: <away.RowAway boat={boat} onRefusal={setRefusal} onGone={onGone} /> };
  };
  return (
    <main className="boats-page">
      <section className="first-words">
        <p>{words.whatItDoes}</p>
        <p>
          {words.newHere}
          <button type="button" className="press-link" onClick={goToHulls}>
            {words.makeYours}
          </button>
          {words.fiveMinutes}
        </p>
      </section>
      <h2>{said.inPlace}</h2>
      {refusal === undefined ? null : <RefusalView refusal={refusal} />}

      <p role="status">{goneSays}</p>
      {boats === undefined && refusal === undefined ? <p className="quiet">{words.looking}</p> : null}
      {isEmpty ? <p className="first-boat">{said.nothingYet}</p> : null}
      {boats === undefined || isEmpty ? null : (
        <ul className="boats">
          {boats.map((boat) => (
            <BoatRow key={boat.id} boat={boat} onCopy={copyFrom('boats', words.copyName)} {...toolsOf(boat)} />
          ))}
        </ul>
      )}
      {boats === undefined || starting === undefined ? null : <starting.NewBoat />}
      {hasDemos ? <DemoBoats demos={demos} onCopy={copyFrom('demos', (name) => name)} /> : null}
      <p className="quiet">
        {words.or}
        <OpenFile onFile={onFile}>{said.openFile}</OpenFile>
        {said.fromElsewhere}
      </p>
      {here === undefined ? null : <here.KeptNotes hasBoats={boats !== undefined && !isEmpty} />}
    </main>
  );
};
