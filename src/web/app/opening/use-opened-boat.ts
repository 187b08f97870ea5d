import { useCallback, useEffect, useRef, useState } from 'react';
import type { StoredBoat } from '../../../core/boat-store-shape.ts';
import type { PlanClient } from '../../workers/plan-client.ts';
import type { PlanState, Refusal } from '../../workers/protocol.ts';
import { onPictureKept, picturesOnPage } from '../pictures/picture-keeper.ts';
import { hashOf, type Route } from '../route.ts';
import type { BoatSaver } from '../saving/boat-saver.ts';
import { store } from '../store/the-store.ts';
import type { BoatRole, BoatTurn } from '../tabs/boat-turn.ts';
import { browserTurn } from '../tabs/browser-turn.ts';
import { words } from './boat-words.ts';
import { kindOfFile } from './kind-of-file.ts';
import { useFileDrop } from './use-file-drop.ts';
import { useTakenFile } from './use-taken-file.ts';

const fileGone: Refusal = {
  says: words.fileGone,
  whatToDo: words.openAgain,
};

interface Hands {
  readonly client: PlanClient;
  readonly saver: BoatSaver;
}

interface BoatWithPictures extends StoredBoat {
  /** the pictures beside her, by hash; undefined where nobody could look */
  readonly pictures: readonly string[] | undefined;
}

/** Brings the boat of an address into the page, as the tab that works on it or as one that follows. */
const boatOfAddress = (
  id: string,
  { client, saver }: Hands,
  on: { readonly refusal: (refusal: Refusal) => void; readonly role: (role: BoatRole) => void },
) => {
  let isGone = false;
  let turn: BoatTurn | undefined;
  let role: BoatRole | undefined;
  const show = ({ text, tag, folder, pictures }: BoatWithPictures): void => {
    if (role === 'follows') client.plan(text);
    else client.plan(text, { file: { key: `${folder}/${id}`, tag }, ...(pictures === undefined ? {} : { pictures }) });
    if (role === 'writes') saver.open({ opened: client.state().revision, text, file: { id, tag } });
  };
  const load = async (use: (found: BoatWithPictures) => void): Promise<void> => {
    const [found, pictures] = await Promise.all([store.read('boats', id), store.pictures(id)]);
    if (isGone) return;
    if ('refusal' in found) on.refusal(found.refusal);
    else use({ ...found, pictures });
  };
  /** The file as it was read before it was this tab’s turn, for the first role; later ones read it again. */
  let first: BoatWithPictures | undefined;
  const takeRole = (next: BoatRole): void => {
    if (isGone) return;
    role = next;
    on.role(next);
    if (next === 'follows') saver.close();
    const read = first;
    first = undefined;
    if (read === undefined) void load(show);
    else show(read);
  };
  void load((found) => {
    first = found;
    turn = browserTurn(`${found.folder}/${id}`, {
      onRole: takeRole,
      onBoat: (text) => client.plan(text),
      // while an earlier state is looked at, the boat as she is stands in her file
      boatNow: () => (saver.file() === undefined ? undefined : client.state().answer?.boatText),
      finish: saver.finish,
    });
  });
  const ofKept = client.onKept(({ boatText }) => turn?.tell(boatText));
  return {
    reload: (): void => {
      saver.close();
      void load(show);
    },
    takeOver: (): void => turn?.takeOver(),
    leave: (): void => {
      isGone = true;
      ofKept();
      // the next tab may work on the boat once all of it is in the file
      void saver.finish().then(() => turn?.leave());
    },
  };
};

/** Loads the boat that the address names and has it planned; gives what kept it from loading, and a way to load it anew. */
const useBoatOfRoute = (route: Route, { client, saver }: Hands) => {
  const [refusal, setRefusal] = useState<Refusal | undefined>(undefined);
  const [role, setRole] = useState<BoatRole>('writes');
  const [anew, setAnew] = useState(0);
  const open = useRef<ReturnType<typeof boatOfAddress> | undefined>(undefined);
  const { page } = route;
  const id = route.page === 'boat' ? route.id : undefined;
  // biome-ignore lint/correctness/useExhaustiveDependencies: opened anew where a person asks for it
  useEffect(() => {
    setRefusal(undefined);
    setRole('writes');
    if (page === 'file') {
      if (client.state().answer === undefined) setRefusal(fileGone);
      return;
    }
    saver.close();
    client.close();
    if (id === undefined) return;
    const opened = boatOfAddress(id, { client, saver }, { refusal: setRefusal, role: setRole });
    open.current = opened;
    return () => {
      opened.leave();
      open.current = undefined;
    };
  }, [page, id, anew, client, saver]);
  const shut = useCallback(() => setRefusal(undefined), []);
  const reload = useCallback(() => open.current?.reload(), []);
  const takeOver = useCallback(() => open.current?.takeOver(), []);
  const openAnew = useCallback(() => setAnew((times) => times + 1), []);
  return { refusal, shut, reload, openAnew, role, takeOver };
};

export interface OpenedBoat {
  readonly openFile: (file: File) => void;
  /** loads the boat of the address anew, as its file is now */
  readonly reload: () => void;
  /** opens the boat of the address from the beginning, as where her file could not be read and now can */
  readonly openAnew: () => void;
  /** whether this tab works on the boat, or follows another that does */
  readonly role: BoatRole;
  /** asks the tab that works on the boat to let this one */
  readonly takeOver: () => void;
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
      shut();
      void file.text().then((text) => {
        client.plan(text, { pictures: picturesOnPage() });
        picked.current = { opened: client.state().revision, text };
      });
    },
    [client, shut],
  );
  const taken = useTakenFile(mayLeave, openBoat);
  const { takeIn, shutTaken } = taken;
  const openFile = useCallback(
    (file: File) => {
      void kindOfFile(file).then((kind) => (kind === 'recording' ? onRecording(file) : takeIn(file, kind)));
    },
    [takeIn, onRecording],
  );
  useFileDrop(openFile);
  useEffect(() => onPictureKept(client.picture), [client]);
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
    openAnew: ofRoute.openAnew,
    role: ofRoute.role,
    takeOver: ofRoute.takeOver,
    refusal: ofRoute.refusal ?? taken.refusal ?? (shutRevision === state.revision ? undefined : state.refusal),
    shutRefusal: () => {
      shut();
      shutTaken();
      setShutRevision(state.revision);
    },
  };
};
