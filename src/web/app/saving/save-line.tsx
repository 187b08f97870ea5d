import { type ReactNode, useState, useSyncExternalStore } from 'react';
import type { PlanAnswer, Refusal } from '../../workers/protocol.ts';
import { addBoat } from '../opening/fetch-boats.ts';
import { hashOf } from '../route.ts';
import type { BoatSaver, SaveState } from './boat-saver.ts';
import { downloadBoat } from './download-boat.ts';

const wordsOf = (state: SaveState): string => {
  switch (state.kind) {
    case 'nothing':
      return '';
    case 'page':
      return state.edited ? 'not saved: the edits are in this page only' : 'opened by hand, in this page only';
    case 'saved':
      return 'saved';
    case 'saving':
      return 'saving';
    case 'changed':
    case 'failed':
      return `not saved: ${state.says}`;
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
}: {
  saver: BoatSaver;
  answer: PlanAnswer;
  onReload: () => void;
}): ReactNode => {
  const state = useSyncExternalStore(saver.subscribe, saver.state);
  const [refusal, setRefusal] = useState<Refusal | undefined>(undefined);
  const addToFolder = async (): Promise<void> => {
    const added = await addBoat(answer.boatText);
    if ('refusal' in added) {
      setRefusal(added.refusal);
      return;
    }
    saver.settle();
    window.location.hash = hashOf({ page: 'boat', id: added.id, step: 'lines' });
  };
  const inTrouble = state.kind === 'changed' || state.kind === 'failed';
  const words = refusal === undefined ? wordsOf(state) : `not saved: ${refusal.says}`;
  return (
    <div className={inTrouble ? 'save-line trouble' : 'save-line'}>
      <p role={inTrouble || refusal !== undefined ? 'alert' : undefined}>{words}</p>
      {state.kind === 'failed' ? <LineButton onPress={saver.saveNow}>try again</LineButton> : null}
      {state.kind === 'changed' ? <LineButton onPress={onReload}>load it anew</LineButton> : null}
      {state.kind === 'changed' || state.kind === 'page' ? (
        <LineButton onPress={() => void addToFolder()}>
          {state.kind === 'page' ? 'keep it in the folder' : 'save it under another name'}
        </LineButton>
      ) : null}
      <LineButton
        onPress={() => {
          downloadBoat({ name: answer.boat.name, text: answer.boatText });
          if (state.kind === 'page') saver.settle();
        }}
      >
        save a copy
      </LineButton>
    </div>
  );
};
