import { type ReactNode, useCallback, useEffect, useRef, useState } from 'react';
import type { PlanClient } from '../../workers/plan-client.ts';
import type { Change, PlanState } from '../../workers/protocol.ts';
import type { Route } from '../route.ts';
import type { HeldBack } from '../tabs/held-back-line.tsx';
import { usePart } from '../use-part.ts';
import type { BoatSaver } from './boat-saver.ts';
import type { EarlierState, StatesView } from './states-view.tsx';

const bringStates = () => import('./states-view.tsx');

const LateStatesView = (given: Parameters<typeof StatesView>[0]): ReactNode => {
  const part = usePart(bringStates);
  return part === undefined ? null : <part.StatesView {...given} />;
};

const restoring = ({ text, title }: EarlierState): Change => ({ kind: 'restore', text, title });

/** The earlier states of the boat that is open: their list, one that is looked at, and restoring. */
export const useEarlierStates = ({
  route,
  state,
  client,
  saver,
  reload,
}: {
  route: Route;
  state: PlanState;
  client: PlanClient;
  saver: BoatSaver;
  reload: () => void;
}): {
  readonly view: ReactNode;
  /** shows or hides the list; absent where the folder keeps nothing of the boat */
  readonly onStates: (() => void) | undefined;
  /** what holds this tab back while an earlier state is looked at */
  readonly held: HeldBack | undefined;
  readonly goBack: () => void;
  readonly restoreSeen: () => void;
} => {
  const id = route.page === 'boat' ? route.id : undefined;
  const [isOpen, setIsOpen] = useState(false);
  const [seen, setSeen] = useState<EarlierState | undefined>(undefined);
  const wanted = useRef<Change | undefined>(undefined);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another boat has other states
  useEffect(() => {
    setIsOpen(false);
    setSeen(undefined);
    wanted.current = undefined;
  }, [id]);
  const look = (earlier: EarlierState): void => {
    setIsOpen(false);
    setSeen(earlier);
    void saver.finish().then(() => {
      saver.close();
      client.plan(earlier.text);
    });
  };
  const goBack = useCallback(() => {
    setSeen(undefined);
    reload();
  }, [reload]);
  const opened = state.answer?.opened;
  // a state that was looked at is restored once the boat as she is has been opened again
  useEffect(() => {
    if (wanted.current === undefined || saver.file()?.opened !== opened) return;
    client.change(wanted.current);
    wanted.current = undefined;
  }, [opened, client, saver]);
  const toggle = useCallback(() => setIsOpen((now) => !now), []);
  return {
    view:
      isOpen && id !== undefined && state.answer !== undefined ? (
        <LateStatesView
          id={id}
          client={client}
          textNow={state.answer.boatText}
          onLook={look}
          onRestore={(earlier) => {
            setIsOpen(false);
            client.change(restoring(earlier));
          }}
          onClose={() => setIsOpen(false)}
        />
      ) : null,
    onStates: id === undefined ? undefined : toggle,
    held: seen === undefined ? undefined : { kind: 'looks', when: seen.when },
    goBack,
    restoreSeen: () => {
      if (seen !== undefined) wanted.current = restoring(seen);
      goBack();
    },
  };
};
