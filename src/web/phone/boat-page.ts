import { el } from './dom/el.ts';
import { browserShelf } from './kept/browser-shelf.ts';
import { browserPictures } from './kept/picture-shelf.ts';
import { httpLink } from './link/http-link.ts';
import { type BoatOnLaptop, pairedOn } from './link/pairing.ts';
import { type LastDone, phoneHand } from './phone-hand.ts';
import { notesScreen } from './screens/notes-screen.ts';
import type { ScreenParts } from './screens/screen.ts';
import { surveyScreen } from './screens/survey-screen.ts';
import { testsScreen } from './screens/tests-screen.ts';
import { todayScreen } from './screens/today-screen.ts';
import { stateLine } from './state-line.ts';
import type { Carried } from './store/carried-entries.ts';
import { keepSyncing, type Later } from './store/keep-syncing.ts';
import type { Again } from './store/phone-state.ts';
import { startPhoneStore } from './store/phone-store.ts';
import { waitingEntries } from './store/waiting-entries.ts';
import { words } from './words.ts';

const screens = { today: todayScreen, tests: testsScreen, survey: surveyScreen, notes: notesScreen } as const;
type ScreenName = keyof typeof screens;
const names = ['today', 'tests', 'survey', 'notes'] as const satisfies readonly ScreenName[];

const randomId = (): string =>
  [...crypto.getRandomValues(new Uint8Array(20))].map((byte) => (byte % 36).toString(36)).join('');

const later: Later = (run, ms) => {
  const timer = setTimeout(run, ms);
  return () => clearTimeout(timer);
};

/** What was written last, with the press that takes it back. */
const lastBar = (write: (undo: NonNullable<LastDone['undo']>) => void) => {
  const says = el('p', { role: 'status' });
  const undo = el('button', { type: 'button' }, words.undo);
  const element = el('div', { class: 'last', hidden: true }, says, undo);
  const tell = (last: LastDone | undefined): void => {
    element.hidden = last === undefined;
    says.textContent = last?.says ?? '';
    undo.hidden = last?.undo === undefined;
    undo.onclick = () => {
      if (last?.undo !== undefined) write(last.undo);
    };
  };
  return { element, tell };
};

/** The page of one boat; gives what ends it. */
export const boatPage = (
  root: HTMLElement,
  boat: BoatOnLaptop,
  {
    pairAgain,
    carryAway,
    head,
  }: {
    readonly pairAgain: () => void;
    readonly carryAway: (carried: Carried) => void;
    readonly head: HTMLElement;
  },
): (() => void) => {
  const store = startPhoneStore({
    boat: boat.id,
    shelf: browserShelf,
    pictures: browserPictures,
    link: httpLink(boat.id, () => pairedOn(browserShelf)?.token),
    nowMs: () => Date.now(),
    newId: randomId,
  });
  const syncing = keepSyncing(store, later);
  const sendPhotos = async (): Promise<Again> => {
    const waited = store.state().log.photos.some(({ id }) => store.state().waiting.has(id));
    const again = await store.sendPhotos();
    // what was sent is known to be there once it is read
    if (waited) syncing.now();
    return again;
  };
  const photos = keepSyncing({ state: store.state, sync: sendPhotos }, later);
  const hand = phoneHand(store, { told: (last) => bar.tell(last), send: syncing.now, sendPhotos: photos.now });
  const bar = lastBar((undo) => hand.write(undo, words.undone));
  const parts: ScreenParts = { hand, ownName: () => pairedOn(browserShelf)?.name };
  const line = stateLine({
    pairAgain,
    carryAway: () => carryAway({ boat, entries: waitingEntries(browserShelf, boat.id).list() }),
    dropAside: store.dropAside,
  });
  const main = el('main', { tabindex: '-1' });
  const made = new Map(names.map((name) => [name, screens[name](parts)]));
  let shown: ScreenName = 'today';
  const update = (): void => {
    line.update(store.state());
    made.get(shown)?.update(store.state());
  };
  const show = (name: ScreenName): void => {
    shown = name;
    for (const [at, button] of buttons.entries())
      if (names[at] === name) button.setAttribute('aria-current', 'page');
      else button.removeAttribute('aria-current');
    bar.tell(undefined);
    update();
    main.replaceChildren(made.get(name)?.element ?? '');
    main.scrollTop = 0;
  };
  const buttons = names.map((name) =>
    el('button', { type: 'button', on: { click: () => show(name) } }, words.screens[name]),
  );
  root.replaceChildren(head, main, el('footer', {}, bar.element, line.element, el('nav', {}, ...buttons)));
  show('today');
  const stopHearing = store.onChange(update);
  const wake = (): void => {
    store.lookAgain();
    syncing.now();
    photos.now();
  };
  const events = [
    [window, 'storage', () => store.lookAgain()],
    [window, 'online', wake],
    [window, 'pageshow', wake],
    [document, 'visibilitychange', wake],
  ] as const;
  for (const [target, event, hear] of events) target.addEventListener(event, hear);
  wake();
  return () => {
    stopHearing();
    syncing.stop();
    photos.stop();
    for (const [target, event, hear] of events) target.removeEventListener(event, hear);
  };
};
