import { type ReactNode, useCallback, useEffect, useState, useSyncExternalStore } from 'react';
import { firstPictureStands } from '../drawing/first-picture.ts';
import type { PlanClient } from '../workers/plan-client.ts';
import type { Change, PlanState } from '../workers/protocol.ts';
import { AskContext } from './ask-context.ts';
import { BoatPage } from './boat-page.tsx';
import { CommandButton } from './commands/command-button.tsx';
import { usePageCommands } from './commands/page-commands.ts';
import { useCommandKeys } from './commands/use-command-keys.ts';
import { EditContext, LookOnlyContext, type MakeEdits } from './edit-context.ts';
import type { EditRow } from './edit-row.tsx';
import { useOpenGuide } from './guide/guide-hand.ts';
import { mayLeaveBoat } from './may-leave.ts';
import { boatSays } from './opening/boat-says.ts';
import type { BoatsPage } from './opening/boats-page.tsx';
import { keepStep } from './opening/last-step.ts';
import { LateRecording } from './opening/recording/late-recording.tsx';
import { usePickedRecording } from './opening/recording/use-picked-recording.ts';
import { useOpenedBoat } from './opening/use-opened-boat.ts';
import { RefusalView } from './refusal-view.tsx';
import { atStep, hashOf, type Route } from './route.ts';
import type { BoatSaver } from './saving/boat-saver.ts';
import type { ClashView } from './saving/clash-view.tsx';
import type { DamagedView } from './saving/damaged-view.tsx';
import { useEarlierStates } from './saving/use-earlier-states.tsx';
import { useFileWatch } from './saving/use-file-watch.ts';
import { useNewerSeen } from './saving/use-newer-seen.ts';
import { useSaving } from './saving/use-saving.ts';
import type { HeldBack } from './tabs/held-back-line.tsx';
import { TopBar } from './top-bar.tsx';
import { useKeptKeyboard } from './use-kept-keyboard.ts';
import { usePart } from './use-part.ts';
import { useRoute } from './use-route.ts';
import { words } from './words.ts';

const FaultView = ({ detail }: { detail: string }): ReactNode => (
  <section className="refusal" role="alert">
    <h2>{words.faultInProgram}</h2>
    <p>{words.nothingLost}</p>
    <p>
      <code>{detail}</code>
    </p>
  </section>
);

const focusOn = (selector: string) => () => document.querySelector<HTMLElement>(selector)?.focus();

/** Buttons and not links, because the address carries the route. */
const SkipButtons = (): ReactNode => (
  <>
    <button type="button" className="skip" onClick={focusOn('.sheet-frame')}>
      {words.skipToDrawing}
    </button>
    <button type="button" className="skip" onClick={focusOn('.margin')}>
      {words.skipToNotes}
    </button>
  </>
);

const bringEditRow = () => import('./edit-row.tsx');

const LateEditRow = (given: Parameters<typeof EditRow>[0]): ReactNode => {
  const part = usePart(bringEditRow);
  return part === undefined ? <div className="save-line" /> : <part.EditRow {...given} />;
};

const bringClashView = () => import('./saving/clash-view.tsx');

const LateClashView = (given: Parameters<typeof ClashView>[0]): ReactNode => {
  const part = usePart(bringClashView);
  return part === undefined ? null : <part.ClashView {...given} />;
};

const bringDamagedView = () => import('./saving/damaged-view.tsx');

const LateDamagedView = (given: Parameters<typeof DamagedView>[0]): ReactNode => {
  const part = usePart(bringDamagedView);
  return part === undefined ? null : <part.DamagedView {...given} />;
};

const bringBoatsPage = () => import('./opening/boats-page.tsx');

/** The list of boats, which a boat that is opened by its address needs nothing of. */
const LateBoatsPage = (given: Parameters<typeof BoatsPage>[0]): ReactNode => {
  const part = usePart(bringBoatsPage);
  return part === undefined ? null : <part.BoatsPage {...given} />;
};

const Body = ({
  route,
  state,
  client,
  onFile,
}: {
  route: Route;
  state: PlanState;
  client: PlanClient;
  onFile: (file: File) => void;
}): ReactNode => {
  if (route.page === 'boats') return <LateBoatsPage onFile={onFile} />;
  if (state.answer === undefined) {
    return <main className="waiting">{state.busy ? words.reading : null}</main>;
  }
  return (
    <BoatPage
      answer={state.answer}
      step={route.step}
      cable={route.page === 'boat' ? route.cable : undefined}
      hrefOf={(step) => hashOf(atStep(route, step))}
      progress={state.busy ? state.progress : undefined}
      onStop={client.stop}
    />
  );
};

const bringGuide = () => import('./guide/guide-view.tsx');

/** The guide beside whatever is open. */
const LateGuide = (): ReactNode => {
  const page = useOpenGuide();
  const part = usePart(bringGuide);
  return page === undefined || part === undefined ? null : <part.GuideView name={page} />;
};

const following: HeldBack = { kind: 'follows' };

/** The whole app: the top bar, and under it the list of boats or one boat. */
export const App = ({ client, saver }: { client: PlanClient; saver: BoatSaver }): ReactNode => {
  const mayLeave = useCallback(() => mayLeaveBoat(saver.state()), [saver]);
  const route = useRoute(mayLeave);
  const state = useSyncExternalStore(client.subscribe, client.state);
  const { recording, takeRecording } = usePickedRecording(route);
  const { openFile, reload, openAnew, role, takeOver, refusal, shutRefusal } = useOpenedBoat(route, state, {
    client,
    saver,
    mayLeave,
    onRecording: takeRecording,
  });
  useSaving(saver, client);
  useFileWatch(saver, client);
  const earlier = useEarlierStates({ route, state, client, saver, reload });
  const newer = useNewerSeen(state, saver);
  const held: HeldBack | undefined = earlier.held ?? newer ?? (role === 'follows' ? following : undefined);
  const [isRefused, setIsRefused] = useState(false);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is said of one tab goes with what holds it back
  useEffect(() => setIsRefused(false), [held?.kind]);
  const change = useCallback(
    (asked: Change) => {
      if (held === undefined) client.change(asked);
      else setIsRefused(true);
    },
    [client, held],
  );
  const edit: MakeEdits = useCallback(
    (edits, title) => change({ kind: 'edit', edits, ...(title === undefined ? {} : { title }) }),
    [change],
  );
  const refuseHere = useCallback(() => setIsRefused(true), []);
  const step = useCallback((kind: 'undo' | 'redo') => change({ kind }), [change]);
  const { answer } = state;
  usePageCommands({ route, edits: answer?.edits, onStep: step });
  useCommandKeys();
  useKeptKeyboard();
  useEffect(() => {
    if (route.page === 'boat') keepStep(route.id, route.step);
  }, [route]);
  const isAwaited = route.page === 'boat' && (answer ?? refusal ?? state.fault) === undefined;
  useEffect(() => {
    if (!isAwaited) firstPictureStands();
  }, [isAwaited]);
  const boat = answer?.boat;
  useEffect(() => {
    document.title = boat === undefined ? words.program : words.titleOf(boat.name);
  }, [boat]);
  return (
    <>
      {boat === undefined ? null : <SkipButtons />}
      <TopBar
        {...(boat === undefined ? {} : { name: boat.name, says: boatSays(boat) })}
        step={route.page === 'boats' ? undefined : route.step}
        isHome={route.page === 'boats'}
        tools={
          answer === undefined ? null : (
            <>
              <CommandButton id="undo" />
              <CommandButton id="redo" />
            </>
          )
        }
        onFile={openFile}
      />
      {answer === undefined ? null : (
        <section className="edit-row" aria-label={words.lastStep}>
          <LateEditRow
            {...{ state, answer, saver, held, isRefused, earlier }}
            onStep={step}
            onReload={reload}
            onTakeOver={takeOver}
          />
        </section>
      )}
      {answer?.edits.clash === undefined ? null : (
        <LateClashView clash={answer.edits.clash} onMerge={(choices) => client.change({ kind: 'merge', choices })} />
      )}
      {earlier.view}
      {refusal === undefined ? null : (
        <RefusalView refusal={refusal} {...(boat === undefined ? {} : { onClose: shutRefusal })} />
      )}
      {refusal === undefined || route.page !== 'boat' || boat !== undefined ? null : (
        <LateDamagedView key={refusal.says} id={route.id} client={client} onRecovered={openAnew} />
      )}
      {state.fault === undefined ? null : <FaultView detail={state.fault} />}
      <EditContext value={edit}>
        <LookOnlyContext value={newer === undefined ? undefined : refuseHere}>
          <AskContext value={client.ask}>
            {recording === undefined ? null : (
              <LateRecording
                key={`${recording.name} ${recording.lastModified} ${recording.size}`}
                file={recording}
                boat={boat}
                onShut={() => takeRecording(undefined)}
              />
            )}
            {recording !== undefined && route.page === 'boats' ? null : (
              <Body route={route} state={state} client={client} onFile={openFile} />
            )}
          </AskContext>
        </LookOnlyContext>
      </EditContext>
      <LateGuide />
    </>
  );
};
