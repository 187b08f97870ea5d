import { useCallback, useEffect, useState } from 'react';
import type { PlanClient } from '../workers/plan-client.ts';
import type { PlanState, Refusal } from '../workers/protocol.ts';
import { fetchBoatText } from './fetch-boats.ts';
import { hashOf, type Route } from './route.ts';
import { useFileDrop } from './use-file-drop.ts';

const fileGone: Refusal = {
  says: 'A file opened by hand is not kept when the page is loaded anew.',
  whatToDo: 'Open it again, or drop it on the page.',
};

/** Loads the boat that the address names and has it planned; gives what kept it from loading. */
const useBoatOfRoute = (route: Route, client: PlanClient): readonly [Refusal | undefined, () => void] => {
  const [refusal, setRefusal] = useState<Refusal>();
  const { page } = route;
  const id = route.page === 'boat' ? route.id : undefined;
  useEffect(() => {
    setRefusal(undefined);
    if (page === 'file') {
      if (client.state().answer === undefined) setRefusal(fileGone);
      return;
    }
    client.close();
    if (id === undefined) return;
    let isGone = false;
    void fetchBoatText(id).then((found) => {
      if (isGone) return;
      if ('text' in found) client.plan(found.text);
      else setRefusal(found.refusal);
    });
    return () => {
      isGone = true;
    };
  }, [page, id, client]);
  const shut = useCallback(() => setRefusal(undefined), []);
  return [refusal, shut];
};

export interface OpenedBoat {
  readonly openFile: (file: File) => void;
  /** why a boat or a file could not be opened, until it is shut */
  readonly refusal: Refusal | undefined;
  readonly shutRefusal: () => void;
}

/** Opens boats: the one the address names, and files picked or dropped on the page. */
export const useOpenedBoat = (route: Route, client: PlanClient, state: PlanState): OpenedBoat => {
  const [ownRefusal, shutOwn] = useBoatOfRoute(route, client);
  const [shutRevision, setShutRevision] = useState(0);
  const [fileRevision, setFileRevision] = useState(0);
  const openFile = useCallback(
    (file: File) => {
      shutOwn();
      void file.text().then((text) => {
        client.plan(text);
        setFileRevision(client.state().revision);
      });
    },
    [client, shutOwn],
  );
  useFileDrop(openFile);
  const answered = state.answer?.revision;
  // The address moves only once the file is a boat, so that a refused file leaves one where one was.
  useEffect(() => {
    if (answered === fileRevision) window.location.hash = hashOf({ page: 'file', step: 'lines' });
  }, [answered, fileRevision]);
  return {
    openFile,
    refusal: ownRefusal ?? (shutRevision === state.revision ? undefined : state.refusal),
    shutRefusal: () => {
      shutOwn();
      setShutRevision(state.revision);
    },
  };
};
