import { type ReactNode, useMemo, useState, useSyncExternalStore } from 'react';
import type { PlanAnswer, Refusal } from '../../workers/protocol.ts';
import { useCommands } from '../commands/use-commands.ts';
import { words as hereWords } from '../kept-here/words.ts';
import { takePicturesAlong } from '../pictures/picture-keeper.ts';
import { hashOf } from '../route.ts';
import { store } from '../store/the-store.ts';
import type { BoatSaver, SaveState } from './boat-saver.ts';
import { saveBoatFile } from './save-file.ts';
import { whenWords } from './when-words.ts';
import { words } from './words.ts';

const isHere = store.kind === 'browser';

const keptWords = (isKept: boolean): string => (isKept ? words.keptHere : words.notKept);

const wordsOf = (state: SaveState): string => {
  switch (state.kind) {
    case 'nothing':
      return '';
    case 'page':
      return state.edited ? words.onPageEdited : words.onPage;
    case 'saved': {
      if (state.isAway) return words.away;
      if (isHere)
        return state.atMs === undefined
          ? hereWords.kept
          : hereWords.keptAt(whenWords(state.atMs, Date.now(), 'minute'));
      const file = `${state.id}.boat.json`;
      return state.atMs === undefined
        ? words.saved(file)
        : words.savedAt(file, whenWords(state.atMs, Date.now(), 'minute'));
    }
    case 'saving':
      return words.saving;
    case 'clash':
      return words.clash;
    case 'changed':
      return state.says === '' ? words.changed : words.notSaved(state.says);
    case 'failed':
      return `${words.notSaved(state.says)} ${keptWords(state.isKept)}`;
  }
};

const LineButton = ({ onPress, children }: { onPress: () => void; children: ReactNode }): ReactNode => (
  <button type="button" className="edit-link" onClick={onPress}>
    {children}
  </button>
);

/** How the boat stands with its file, in words, and what can be done about it. */
export const SaveLine = ({
  saver,
  answer,
  onReload,
  onStates,
}: {
  saver: BoatSaver;
  answer: PlanAnswer;
  onReload: () => void;
  /** shows the earlier states of the boat; absent where the folder keeps none of it */
  onStates?: (() => void) | undefined;
}): ReactNode => {
  const state = useSyncExternalStore(saver.subscribe, saver.state);
  const [refusal, setRefusal] = useState<Refusal | undefined>(undefined);
  useCommands(
    useMemo(
      () =>
        onStates === undefined
          ? []
          : [{ id: 'earlier-states', group: 'boat', says: words.earlierSays, short: words.earlier, run: onStates }],
      [onStates],
    ),
  );
  const addToFolder = async (): Promise<void> => {
    const added = await store.add(answer.boatText);
    if ('refusal' in added) {
      setRefusal(added.refusal);
      return;
    }
    await takePicturesAlong(added.id, answer.boatText);
    saver.settle();
    window.location.hash = hashOf({ page: 'boat', id: added.id, step: 'lines' });
  };
  const { notice } = answer.edits;
  const unread = notice?.kind === 'kept-unread' ? notice.text : undefined;
  const inTrouble = state.kind === 'changed' || state.kind === 'failed' || state.kind === 'clash';
  const says = refusal === undefined ? wordsOf(state) : words.notSaved(refusal.says);
  return (
    <div className={inTrouble ? 'save-line trouble' : 'save-line'}>
      <p role={inTrouble || refusal !== undefined ? 'alert' : undefined}>{says}</p>
      {state.kind === 'failed' ? <LineButton onPress={saver.saveNow}>{words.tryAgain}</LineButton> : null}
      {state.kind === 'changed' ? <LineButton onPress={onReload}>{words.loadAnew}</LineButton> : null}
      {state.kind === 'changed' || state.kind === 'page' ? (
        <LineButton onPress={() => void addToFolder()}>
          {state.kind === 'page' ? (isHere ? hereWords.keepHere : words.keepInFolder) : words.otherName}
        </LineButton>
      ) : null}
      {unread === undefined ? null : (
        <LineButton onPress={() => saveBoatFile(words.keptFile(answer.boat.name), unread)}>{words.saveKept}</LineButton>
      )}
      {onStates === undefined ? null : <LineButton onPress={onStates}>{words.earlier}</LineButton>}
      <LineButton
        onPress={() => {
          saveBoatFile(answer.boat.name, answer.boatText);
          if (state.kind === 'page') saver.settle();
        }}
      >
        {words.saveCopy}
      </LineButton>
    </div>
  );
};
