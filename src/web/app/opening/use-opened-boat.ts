import { useCallback, useEffect, useRef, useState } from 'react';
import type { PlanClient } from '../../workers/plan-client.ts';
import type { PlanState, Refusal } from '../../workers/protocol.ts';
import { hashOf, type Route } from '../route.ts';
import type { BoatSaver } from '../saving/boat-saver.ts';
import { fetchBoatText } from './fetch-boats.ts';
import { kindOfFile } from './kind-of-file.ts';
import { useFileDrop } from './use-file-drop.ts';

const fileGone: Refusal = {
  says: 'A file opened by hand is not kept when the page is loaded anew.',
  whatToDo: 'Open it again, or drop it on the page.',
};

interface Hands {
  readonly client: PlanClient;
  readonly saver: BoatSaver;
}

/** Loads the boat that the address names and has it planned; gives what kept it from loading, and a way to load it anew. */
const useBoatOfRoute = (route: Route, { client, saver }: Hands) => {
  const [refusal, setRefusal] = useState<Refusal | undefined>(undefined);
  const [turn, setTurn] = useState(0);
  const { page } = route;
  const id = route.page === 'boat' ? route.id : undefined;
  // biome-ignore lint/correctness/useExhaustiveDependencies: another turn loads the same boat anew
  useEffect(() => {
    setRefusal(undefined);
    if (page === 'file') {
      if (client.state().answer === undefined) setRefusal(fileGone);
      return;
    }
    saver.close();
    client.close();
    if (id === undefined) return;
    let isGone = false;
    void fetchBoatText('boats', id).then((found) => {
      if (isGone) return;
      if ('refusal' in found) {
        setRefusal(found.refusal);
        return;
      }
      const { text, tag } = found;
      client.plan(text);
      saver.open({ opened: client.state().revision, text, file: { id, tag } });
    });
    return () => {
      isGone = true;
    };
  }, [page, id, turn, client, saver]);
  const shut = useCallback(() => setRefusal(undefined), []);
  const reload = useCallback(() => setTurn((old) => old + 1), []);
  return { refusal, shut, reload };
};

export interface OpenedBoat {
  readonly openFile: (file: File) => void;
  /** loads the boat of the address anew, as its file is now */
  readonly reload: () => void;
  /** why a boat or a file could not be opened, until it is shut */
  readonly refusal: Refusal | undefined;
  readonly shutRefusal: () => void;
}

/** Opens boats: the one the address names, and files picked or dropped on the page. */
export const useOpenedBoat = (
  route: Route,
  state: PlanState,
  {
    client,
    saver,
    mayLeave,
    onRecording,
  }: Hands & {
    readonly mayLeave: () => boolean;
    /** takes a file that is no boat file */
    readonly onRecording: (file: File) => void;
  },
): OpenedBoat => {
  const ofRoute = useBoatOfRoute(route, { client, saver });
  const [shutRevision, setShutRevision] = useState(0);
  const picked = useRef({ opened: 0, text: '' });
  const { shut } = ofRoute;
  const openBoat = useCallback(
    (file: File) => {
      if (!mayLeave()) return;
      shut();
      void file.text().then((text) => {
        client.plan(text);
        picked.current = { opened: client.state().revision, text };
      });
    },
    [client, mayLeave, shut],
  );
  const openFile = useCallback(
    (file: File) => {
      void kindOfFile(file).then((kind) => (kind === 'boat' ? openBoat(file) : onRecording(file)));
    },
    [openBoat, onRecording],
  );
  useFileDrop(openFile);
  const opened = state.answer?.opened;
  // Only once the file is a boat do address and saver move on, so that a refused file leaves one where one was.
  useEffect(() => {
    if (opened !== picked.current.opened) return;
    saver.open(picked.current);
    window.location.hash = hashOf({ page: 'file', step: 'lines' });
  }, [opened, saver]);
  return {
    openFile,
    reload: ofRoute.reload,
    refusal: ofRoute.refusal ?? (shutRevision === state.revision ? undefined : state.refusal),
    shutRefusal: () => {
      shut();
      setShutRevision(state.revision);
    },
  };
};
